import type { Assessment, JudgedPart, Mark, RemedyRefusal, Verdict } from "@cornerway/schema";
import { judgedIn } from "../chart/confirm-place.ts";
import { addedBy, type Judged } from "../chart/judged.ts";
import { judged, strengthMarks } from "../marks/strength-marks.ts";
import { verdictRank, worstOf } from "../marks/verdicts-of.ts";
import type { ElementResult } from "../strength/element-result.ts";
import type { Strength } from "../strength/strength-of.ts";
import { unitStrength } from "../strength/unit-strength.ts";
import type { ChartReason } from "../chart/chart.ts";

export type Accepted = Extract<Strength, { accepted: true }>;

/** What a change has to stand up to. */
export type ProofGround = {
  readonly mark: Mark;
  /** Strength the parts with the change are held against: the scheme as it is, for openings the wall without the opening. */
  readonly reference: Accepted;
  /** For marks of how a unit stands: the unit by itself on its four corners, against which its own parts are held. */
  readonly plain: Accepted | undefined;
  /** The unit the mark is about. */
  readonly unitId: string;
};

export type Proof =
  | { readonly ok: false; readonly why: RemedyRefusal }
  | {
      readonly ok: true;
      readonly verdict: Verdict;
      readonly why?: ChartReason;
      readonly governing: readonly JudgedPart[];
      readonly stillOpen: readonly string[];
    };

/**
 * What strength says of a change: of all that is new or worse with it anywhere in the building, of the parts the mark is about,
 * and of the mark itself.
 */
export function proof(
  { mark, reference, plain, unitId }: ProofGround,
  path: Assessment,
  after: Accepted,
  added: ReadonlySet<string>,
): Proof {
  const standsNow = moves.has(mark.fact.kind);
  const results = after.results.filter(
    (result) =>
      added.has(result.ownerId) ||
      (plain !== undefined && result.ownerId === unitId) ||
      isComparable(result, reference.results, standsNow),
  );
  const before = heldAgainst(judgedIn(reference, unitId), plain, unitId);
  const now: Judged = { ...judgedIn(after, unitId), results };
  const answer = addedBy(now, before, unitId, added.size > 0);
  const marks = [...path.marks, ...strengthMarks(after, () => NOWHERE)];
  if (isOfStrength(mark) && marks.some(({ id, verdict }) => id === mark.id && !milder(verdict, mark.verdict)))
    return { ok: false, why: { kind: "does not settle it" } };
  const own = ownResults(mark, results);
  const ownVerdict = ofOwn(mark, unitId, own, after, added.size > 0);
  const verdict = worstOf([answer.verdict, ...(ownVerdict === undefined ? [] : [ownVerdict])]);
  if (verdict === "does not work") return { ok: false, why: { kind: "strength", why: reasonOf(answer, own) } };
  const shown = results.filter(({ ownerId }) => added.has(ownerId) || (plain !== undefined && ownerId === unitId));
  const governing = [...own, ...shown];
  return {
    ok: true,
    verdict,
    ...(verdict === "needs the engineer" && { why: reasonOf(answer, own) }),
    governing: onceEach(governing.toSorted(fullestFirst)).slice(0, TOLD).map(judged),
    stillOpen: stillOpen(mark, marks),
  };
}

/** The unit's own parts as they are when it stands plainly; all else as it is. */
const heldAgainst = (before: Judged, plain: Accepted | undefined, unitId: string): Judged =>
  plain === undefined
    ? before
    : {
        ...before,
        results: [
          ...before.results.filter(({ ownerId }) => ownerId !== unitId),
          ...plain.results.filter(({ ownerId }) => ownerId === unitId),
        ],
      };

/** Parts told with an option. */
const TOLD = 4;
const NOWHERE = { xMm: 0, yMm: 0, zMm: 0 };

/**
 * A part that was known only with something held that is not there cannot be compared with the same part standing as drawn; nor
 * can one of a body that did not stand, where nothing was known of it.
 */
function isComparable({ id, held }: ElementResult, reference: readonly ElementResult[], standsNow: boolean): boolean {
  const known = reference.find((one) => one.id === id);
  return known === undefined ? !standsNow : known.held.length === 0 || held.length > 0;
}

const isOfStrength = ({ fact: { kind } }: Mark): boolean =>
  ["overstressed", "strength-open", "uplift", "slides", "no-lateral-wall"].includes(kind);

/** Parts that name two of the elements the mark is about: where one bears on the other. */
function ownResults({ elements }: Mark, results: readonly ElementResult[]): ElementResult[] {
  return results.filter(({ id }) => {
    const words = new Set(id.split(/[ ,:]+/));
    return elements.filter((element) => words.has(element)).length >= 2;
  });
}

/** Marks of a body that moves ask for every hold it needs; of bearings, for the parts where they bear. */
function ofOwn(
  { fact: { kind } }: Mark,
  unitId: string,
  results: readonly ElementResult[],
  after: Accepted,
  withSteel: boolean,
): Verdict | undefined {
  const holds = moves.has(kind) ? after.holds.filter(({ ownerId }) => ownerId === unitId) : [];
  const asked = kind === "load-over-opening" || bears.has(kind) ? results : [];
  if (holds.length === 0 && asked.length === 0) return undefined;
  return unitStrength({ unitId, results: asked, holds, refused: [], runs: 0, withSteel, given: [] }).verdict;
}

/** Marks of how a unit stands as a body. */
export const moves: ReadonlySet<string> = new Set([
  "tips-over",
  "near-tipping",
  "mechanism",
  "overhang",
  "uplift",
  "slides",
]);
/** Marks of what a unit comes down on. */
export const bears: ReadonlySet<string> = new Set([
  "overhang",
  "borne-on-rail",
  "made-connection",
  "corner-on-air",
  "rocks",
]);

function reasonOf({ why }: ReturnType<typeof addedBy>, own: readonly ElementResult[]): ChartReason {
  const [fullest] = own.toSorted(fullestFirst);
  if (why.kind !== "within" || fullest === undefined) return why;
  const { id, governingRun, assumptions, utilisation } = fullest;
  const because = utilisation === undefined ? "refused" : "over";
  return { kind: "part", because, partId: id, use: utilisation ?? 0, run: governingRun, assumptions };
}

/** Marks on what the mark concerns that still ask for something. */
const stillOpen = (mark: Mark, marks: readonly Mark[]): string[] =>
  marks
    .filter(({ id, verdict, elements }) => {
      const asks = verdict === "does not work" || verdict === "needs the engineer";
      return id !== mark.id && asks && elements.some((element) => mark.elements.includes(element));
    })
    .map(({ id }) => id);

const milder = (now: Verdict, before: Verdict): boolean => verdictRank[now] < verdictRank[before];

const fullestFirst = (a: ElementResult, b: ElementResult): number =>
  useOf(b) === useOf(a) ? (a.id < b.id ? -1 : 1) : useOf(b) - useOf(a);

const useOf = ({ utilisation, refused }: ElementResult): number => (refused ? Infinity : (utilisation ?? 0));

const onceEach = (results: readonly ElementResult[]): ElementResult[] =>
  results.filter(({ id }, at) => results.findIndex((one) => one.id === id) === at);
