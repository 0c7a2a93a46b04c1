import type { JudgedPart, Mark, RemedyRefusal, Verdict } from "@cornerway/schema";
import type { ChartReason } from "../chart/chart.ts";
import { judgedIn } from "../chart/confirm-place.ts";
import { gravestReason } from "../chart/judged.ts";
import { judged, strengthMarks } from "../marks/strength-marks.ts";
import { verdictRank } from "../marks/verdicts-of.ts";
import type { ElementResult } from "../strength/element-result.ts";
import type { StrengthReason } from "../strength/strength-reason.ts";
import { unitStrength } from "../strength/unit-strength.ts";
import type { Drawn } from "./drawn-trial.ts";
import { usedOf } from "./known-parts.ts";
import { isOfMark } from "./lacking-of.ts";
import { ofStrength } from "./mark-groups.ts";
import { newElements } from "./new-elements.ts";
import type { Lacking } from "./repairs/repair.ts";
import type { Accepted, SearchGround } from "./search-ground.ts";

export type Proof =
  | { readonly ok: false; readonly why: RemedyRefusal }
  | {
      readonly ok: true;
      readonly verdict: Verdict;
      readonly under: Accepted["under"];
      readonly why?: ChartReason;
      readonly governing: readonly JudgedPart[];
      /** Marks on what it concerns that were there before and still ask for something else. */
      readonly stillOpen: readonly string[];
    };

/**
 * What strength says of a change: of all it lacks anywhere in the building, of the parts the mark is about, and of the mark itself.
 * `lacks` is by the same run.
 */
export function proof({ trial, scheme, path }: Drawn, after: Accepted, lacks: Lacking, ground: SearchGround): Proof {
  const { mark, unitId } = ground;
  const marks = [...path.marks, ...strengthMarks(after, () => NOWHERE)];
  const still =
    ofStrength.has(mark.fact.kind) && marks.find(({ id, verdict }) => id === mark.id && !isMilder(verdict, mark));
  if (still && !isOfNoPart(still, mark)) return { ok: false, why: { kind: "does not settle it" } };
  const added = newElements(trial.operations);
  const lacking = new Set(lacks.parts.map(({ id }) => id));
  const own = after.results.filter(
    (result) => lacking.has(result.id) || (usedOf(result).use <= 1 && isShown(result, added, ground)),
  );
  const withSteel =
    added.size > 0 || scheme.openings.some(({ containerId, framed }) => containerId === unitId && framed);
  const given = still ? judgedIn(after, unitId).leftOut : leftOutAnew(after, ground);
  const answer = unitStrength({ unitId, results: own, holds: lacks.holds, refused: [], runs: 0, withSteel, given });
  const [fallen] = fallenAnew(after, ground);
  const why: ChartReason | undefined =
    gravestReason(answer.reasons, after.results) ??
    (fallen === undefined ? undefined : { kind: "no equilibrium", run: fallen });
  if (answer.verdict === "does not work" && why !== undefined) return { ok: false, why: { kind: "strength", why } };
  return {
    ok: true,
    verdict: why === undefined ? answer.verdict : "needs the engineer",
    under: after.under,
    ...(why && { why }),
    governing: own.toSorted(fullestFirst).slice(0, TOLD).map(judged),
    stillOpen: stillOpen(mark, marks),
  };
}

/** Parts told with an option. */
const TOLD = 4;
const NOWHERE = { xMm: 0, yMm: 0, zMm: 0 };

/** What is new, of the unit, or named by the mark. */
const isShown = (result: ElementResult, added: ReadonlySet<string>, { mark, unitId }: SearchGround): boolean =>
  added.has(result.ownerId) || result.ownerId === unitId || isOfMark(result, mark);

/** All parts that the mark named are settled, and what is left of it lies in none: that is the engineer's. */
const isOfNoPart = ({ fact: now }: Mark, { fact: was }: Mark): boolean =>
  now.kind === "strength-open" && was.kind === "strength-open" && now.parts.length === 0 && was.parts.length > 0;

/** Reasons of the unit that lie in no part and were not there. */
function leftOutAnew(after: Accepted, { asIs, unitId }: SearchGround): readonly StrengthReason[] {
  const known = new Set(judgedIn(asIs, unitId).leftOut.map((reason) => JSON.stringify(reason)));
  return judgedIn(after, unitId).leftOut.filter((reason) => !known.has(JSON.stringify(reason)));
}

/** Runs that nothing makes stand and that stood as drawn before. */
function fallenAnew(after: Accepted, { asIs }: SearchGround): string[] {
  const before = new Set(asIs.refusedRuns.map(({ run }) => run));
  return after.refusedRuns.flatMap(({ run, held }) => (held === undefined && !before.has(run) ? [run] : []));
}

const isMilder = (now: Verdict, { verdict }: Mark): boolean => verdictRank[now] < verdictRank[verdict];

const stillOpen = (mark: Mark, marks: readonly Mark[]): string[] =>
  marks
    .filter(({ id, verdict, elements }) => {
      const asks = verdict === "does not work" || verdict === "needs the engineer";
      return id !== mark.id && asks && elements.some((element) => mark.elements.includes(element));
    })
    .map(({ id }) => id);

const fullestFirst = (a: ElementResult, b: ElementResult): number =>
  usedOf(b).use === usedOf(a).use ? (a.id < b.id ? -1 : 1) : usedOf(b).use - usedOf(a).use;
