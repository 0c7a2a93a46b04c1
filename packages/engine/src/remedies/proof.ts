import type { Assessment, JudgedPart, Mark, RemedyRefusal, Verdict } from "@cornerway/schema";
import { judgedIn } from "../chart/confirm-place.ts";
import { measureOf } from "../impact/mark-measure.ts";
import { addedBy, type Finding, type Judged } from "../chart/judged.ts";
import { judged, strengthMarks } from "../marks/strength-marks.ts";
import { verdictRank, worstOf } from "../marks/verdicts-of.ts";
import type { ElementResult } from "../strength/element-result.ts";
import type { HoldNeeded } from "../strength/holds-needed.ts";
import type { Strength } from "../strength/strength-of.ts";
import { unitStrength } from "../strength/unit-strength.ts";
import type { ChartReason } from "../chart/chart.ts";

export type Accepted = Extract<Strength, { accepted: true }>;

/** What a change has to stand up to. */
export type ProofGround = {
  readonly mark: Mark;
  /** The scheme as it is: nothing else may stand worse. */
  readonly asIs: Accepted;
  /**
   * What the unit's own parts are held against: for openings the wall without the opening, for marks of how a unit stands the
   * unit by itself on its four corners, else the scheme as it is.
   */
  readonly own: Accepted;
  /** The unit the mark is about. */
  readonly unitId: string;
  /** Steel is drawn in it, or added. */
  readonly withSteel: boolean;
};

export type Proof =
  | { readonly ok: false; readonly why: RemedyRefusal }
  | {
      readonly ok: true;
      readonly verdict: Verdict;
      readonly why?: ChartReason;
      readonly governing: readonly JudgedPart[];
      readonly stillOpen: readonly string[];
      /** Marks that were there and weigh more. */
      readonly heavier: readonly string[];
    };

/**
 * What strength says of a change: of all that is new or worse with it anywhere in the building, of the parts the mark is about,
 * and of the mark itself.
 */
export function proof(
  { mark, asIs, own: reference, unitId, withSteel }: ProofGround,
  path: Assessment,
  after: Accepted,
  added: ReadonlySet<string>,
): Proof {
  const known = judgedIn(asIs, unitId);
  // a run that did not stand as drawn before says nothing when it falls
  const fallen = asIs.refusedRuns.map(({ run }) => run);
  const before = heldAgainst({ ...known, fallen }, reference, unitId);
  const standsNow = moves.has(mark.fact.kind);
  const results = after.results.filter((result) => {
    if (added.has(result.ownerId)) return true;
    return (
      isComparable(result, before.results, standsNow && result.ownerId !== unitId) &&
      !isAboutAsBad(result, before.results)
    );
  });
  const judgedNow = judgedIn(after, unitId);
  const now: Judged = {
    ...judgedNow,
    results,
    holds: judgedNow.holds.filter((hold) => !isKnownHold(hold, before.holds)),
  };
  const answer = addedBy(now, before, unitId, withSteel);
  const marks = [...path.marks, ...strengthMarks(after, () => NOWHERE)];
  if (isOfStrength(mark) && marks.some(({ id, verdict }) => id === mark.id && !milder(verdict, mark.verdict)))
    return { ok: false, why: { kind: "does not settle it" } };
  const own = ownResults(mark, results);
  const ownVerdict = ofOwn(mark, unitId, own, after, withSteel);
  const verdict = worstOf([answer.verdict, ...(ownVerdict === undefined ? [] : [ownVerdict])]);
  if (verdict === "does not work") return { ok: false, why: { kind: "strength", why: reasonOf(answer, own) } };
  const shown = results.filter(({ ownerId }) => added.has(ownerId) || ownerId === unitId);
  const governing = [...own, ...shown];
  return {
    ok: true,
    verdict,
    ...(verdict === "needs the engineer" && { why: reasonOf(answer, own) }),
    governing: onceEach(governing.toSorted(fullestFirst)).slice(0, TOLD).map(judged),
    stillOpen: stillOpen(mark, marks),
    heavier: heavierMarks(asIs, after),
  };
}

/** The unit's own parts against what they are held against; all else as it is. */
const heldAgainst = (before: Judged, own: Accepted, unitId: string): Judged => ({
  ...before,
  results: [
    ...before.results.filter(({ ownerId }) => ownerId !== unitId),
    ...own.results.filter(({ ownerId }) => ownerId === unitId),
  ],
});

/** Parts told with an option. */
const TOLD = 4;
const NOWHERE = { xMm: 0, yMm: 0, zMm: 0 };

/**
 * A part that was known only with something held that is not there cannot be compared with the same part standing as drawn; nor
 * can one of a body that did not stand, where nothing was known of it.
 */
function isComparable({ id, held }: ElementResult, reference: readonly Finding[], standsNow: boolean): boolean {
  const known = reference.find((one) => one.id === id);
  return known === undefined ? !standsNow : known.held.length === 0 || held.length > 0;
}

/**
 * A part that is beyond its strength already has a mark of its own: it is not laid on a change that leaves it about as it is. What
 * grows is told with the option.
 */
function isAboutAsBad(result: ElementResult, reference: readonly Finding[]): boolean {
  const known = reference.find(({ id }) => id === result.id);
  return known !== undefined && useOf(known) > 1 && useOf(result) <= useOf(known) * ABOUT;
}

/** What nothing holds already has a mark of its own, whose growth is told with the option. */
const isKnownHold = (hold: HoldNeeded, reference: readonly HoldNeeded[]): boolean =>
  reference.some(({ kind, ownerId }) => kind === hold.kind && ownerId === hold.ownerId);

/** Settlement and packing shift forces by so much between two ways to stand. Judged, no published source. */
const ABOUT = 1.1;

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

/** Marks of strength of the same verdict whose own figure grows by more than a fiftieth. */
function heavierMarks(asIs: Accepted, after: Accepted): string[] {
  const was = new Map(strengthMarks(asIs, () => NOWHERE).map((mark) => [mark.id, measureOf(mark)]));
  return strengthMarks(after, () => NOWHERE)
    .filter(({ verdict }) => verdict === "does not work" || verdict === "needs the engineer")
    .filter((mark) => {
      const [old, now] = [was.get(mark.id), measureOf(mark)];
      return typeof old === "number" && now !== null && now > old * GROWN;
    })
    .map(({ id }) => id);
}

/** Less is a shift of load between equals: as charts count it. */
const GROWN = 1.02;

const milder = (now: Verdict, before: Verdict): boolean => verdictRank[now] < verdictRank[before];

const fullestFirst = (a: ElementResult, b: ElementResult): number =>
  useOf(b) === useOf(a) ? (a.id < b.id ? -1 : 1) : useOf(b) - useOf(a);

/** As drawn, or once held: whichever is greater. */
function useOf({ utilisation, refused, ifHeldDown }: Finding): number {
  if (refused !== undefined) return Infinity;
  return Math.max(utilisation ?? 0, ifHeldDown === undefined ? 0 : (ifHeldDown ?? Infinity));
}

const onceEach = (results: readonly ElementResult[]): ElementResult[] =>
  results.filter(({ id }, at) => results.findIndex((one) => one.id === id) === at);
