import type { Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import { assumed } from "./assumed.ts";
import { softRacking, type AssumptionId } from "./assumption-sets.ts";
import { buildingReasons } from "./building-reasons.ts";
import { groundOf } from "./checked-parts.ts";
import type { ElementResult } from "./element-result.ts";
import { holdsOfAll, type HoldNeeded } from "./holds-needed.ts";
import { lateralGaps, type LateralGap } from "./lateral/lateral-gaps.ts";
import { wallsByUnit } from "./lateral/wall-parts.ts";
import { notJudged } from "./not-judged.ts";
import { padChecks } from "./pad-parts.ts";
import { withPadSizes } from "./pad-size.ts";
import type { ScreenedSet, SetReport } from "./screened-set.ts";
import { skinResults } from "./skin-results.ts";
import type { RefusedRun } from "./solve-runs.ts";
import { statedResult } from "./stated-result.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthShare } from "./strength-share.ts";
import { toldOnce } from "./sure-part.ts";
import type { Lean } from "./sway.ts";
import type { UnitStrength } from "./unit-strength.ts";
import { unitVerdicts } from "./unit-verdicts.ts";

/** What strength says of a scheme, by unit and by part, or why nothing can be said. Screening, never the engineer's answer. */
export type Strength =
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] }
  | {
      readonly accepted: true;
      readonly units: readonly UnitStrength[];
      /** What governs each part, greatest utilisation first; refused ones before all. */
      readonly results: readonly ElementResult[];
      readonly holds: readonly HoldNeeded[];
      readonly envelope: readonly SetReport[];
      readonly refusedRuns: readonly {
        readonly run: string;
        readonly assumptions: AssumptionId;
        readonly words: string;
        /** What had to be held for it to stand; absent where nothing made it stand. */
        readonly held?: readonly string[];
      }[];
      /** What was judged: without hazards in the basis gravity alone. */
      readonly under: "gravity loads only" | "all loads";
      /** How many times as large level loads are for the building's own lean. */
      readonly enlargement: number;
      /** Load vectors solved over all sets, and checks made on them. */
      readonly vectors: number;
      readonly checks: number;
      /** Largest unbalanced force over the largest load, of all runs solved. */
      readonly worstResidual: number;
      readonly assumed: typeof assumed;
      readonly notJudged: typeof notJudged;
    };

/** All that the pieces of a run told, sets in the order of the envelope. */
export type StrengthFound = {
  readonly leans: readonly Lean[];
  /** How many times as large level loads were. */
  readonly enlargement: number;
  /** Sets solved for every run, and those solved for what governed in them. */
  readonly whole: readonly ScreenedSet[];
  readonly rest: readonly ScreenedSet[];
  /** What governs each part, and what is judged beside the runs. */
  readonly governing: readonly ElementResult[];
  readonly beside: readonly ElementResult[];
};

/** Puts the pieces of a run together: what is judged of parts and units, with the envelope. */
export function strengthFrom(
  { ground, built, bearings }: Pick<StrengthShare, "ground" | "built" | "bearings">,
  basis: StrengthBasis,
  { leans, enlargement, whole, rest, governing, beside }: StrengthFound,
): Strength {
  const { scheme, analysis, actions } = ground;
  const sets = [...whole, ...rest];
  const judged = sizedPads(toldOnce(governing), scheme, basis);
  const results = [
    ...judged,
    ...leans.map(leanResult),
    ...skinResults(scheme, actions, basis, judged),
    ...beside,
  ].toSorted(worstFirst);
  const refused = sets.flatMap((set) => set.refused);
  const runs = sets.reduce((sum, { report }) => sum + report.runs, 0);
  const holds = holdsOfAll(
    bearings,
    sets.map((set) => set.holds),
  );
  const gaps = lateralGapsOf(scheme, analysis, basis);
  const units = unitVerdicts(
    { scheme, built, bearings, results, holds, refused, runs, gaps },
    buildingReasons(actions, scheme, analysis),
  );
  const envelope = sets.map(({ report }) => report);
  return {
    accepted: true,
    units,
    results,
    holds,
    envelope,
    refusedRuns: refused.map(refusedRun),
    under: actions.site === undefined ? "gravity loads only" : "all loads",
    enlargement,
    vectors: envelope.reduce((sum, { runs: solved }) => sum + solved, 0),
    checks: sets.reduce((sum, { checks }) => sum + checks, 0),
    worstResidual: Math.max(...envelope.map((report) => report.worstResidual)),
    assumed,
    notJudged,
  };
}

const sizedPads = (
  results: readonly ElementResult[],
  { pads, basis: { soil, concreteMpa } }: Scheme,
  basis: StrengthBasis,
) =>
  withPadSizes(results, pads, ({ sideMm, depthMm }) =>
    padChecks({ lengthMm: sideMm, widthMm: sideMm, depthMm }, groundOf(soil, basis), concreteMpa, basis),
  );

/** None where the engineer has left sheet walls out: then his own system is asked for, and named as a reason. */
function lateralGapsOf(scheme: Scheme, { structure }: Analysis, { allowable }: StrengthBasis): LateralGap[] {
  const { sheetWalls } = scheme.basis;
  if (sheetWalls.rule === "left out") return [];
  return lateralGaps(scheme, wallsByUnit(structure, sheetWalls, allowable));
}

const leanResult = ({ unitId, run, check }: Lean): ElementResult =>
  statedResult({ ownerId: unitId, place: "lean under what stands on it", run, assumptions: softRacking.id }, check);

/** Refused ones first, then by utilisation, then by name. */
function worstFirst(a: ElementResult, b: ElementResult): number {
  const [one, other] = [a.utilisation ?? Infinity, b.utilisation ?? Infinity];
  if (one !== other) return other - one;
  return a.id < b.id ? -1 : 1;
}

const refusedRun = ({ run, set, refusal, held }: RefusedRun) => ({
  run: run.id,
  assumptions: set.id,
  words: refusal.refused,
  ...(held && { held }),
});
