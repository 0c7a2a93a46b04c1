import type { Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import { assumed } from "./assumed.ts";
import { assumptionSets, softRacking, type AssumptionId, type AssumptionSet } from "./assumption-sets.ts";
import { checkedParts, groundOf } from "./checked-parts.ts";
import { buildingReasons } from "./building-reasons.ts";
import { elementResult, type ElementResult } from "./element-result.ts";
import { erectionResults } from "./erection-results.ts";
import { holdsNeeded, type HoldNeeded } from "./holds-needed.ts";
import { deflectionResults } from "./deflection-results.ts";
import { floorResults } from "./floor-results.ts";
import { liftResults } from "./lift-results.ts";
import { lateralGaps, type LateralGap } from "./lateral/lateral-gaps.ts";
import { wallsByUnit } from "./lateral/wall-parts.ts";
import { modelledBearings } from "./modelled-bearings.ts";
import { padChecks } from "./pad-parts.ts";
import { withPadSizes } from "./pad-size.ts";
import { notJudged } from "./not-judged.ts";
import { andGravityAlone } from "./gravity-alone.ts";
import { governingRuns, isHeldAgainst, screen, type PartWorst } from "./screen.ts";
import type { RefusedRun, SolvedRun, SolvedSet, StrengthMemory } from "./solve-runs.ts";
import { solveSettling } from "./settling.ts";
import { skinResults } from "./skin-results.ts";
import { statedResult } from "./stated-result.ts";
import type { StrengthPart } from "./strength-part.ts";
import { partsMadeWith } from "./parts-made.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { strengthPlan } from "./strength-plan.ts";
import type { RunPlan } from "./run-plan.ts";
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

/** What was run under one set of assumptions. */
export type SetReport = {
  readonly assumptions: AssumptionId;
  readonly runs: number;
  readonly withoutEquilibrium: number;
  readonly worstResidual: number;
};

/** Told after each set of assumptions, how many of how many are solved. */
export type TellProgress = (done: number, of: number) => void;

/** Sets of assumptions one run solves. */
export const strengthSteps: number = assumptionSets.length;

/**
 * Actions, model, solution over the envelope, screening of every part in every run, full working where something governs,
 * verdicts. Pure. Throws a RangeError for a scheme without containers.
 */
export function strengthOf(
  given: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  tell: TellProgress = () => undefined,
): Strength {
  const plan = strengthPlan(given, basis, memory);
  if (!plan.accepted) return plan;
  const { scheme, analysis, actions, cases, leans } = plan;
  const [base, ...others] = assumptionSets;
  const first = solveSettling(analysis, cases, plan.runs, base, memory);
  let done = 1;
  tell(done, strengthSteps);
  const solve = (set: AssumptionSet, runs: RunPlan["runs"]) => {
    const solved = solveSettling(analysis, cases, runs, set, memory, first.built.model);
    tell(++done, strengthSteps);
    return solved;
  };
  // lines and bearings go by the same names in every set
  const parts = checkedParts(analysis, first.built, scheme, basis, partsMadeWith(memory));

  const whole = [first, ...others.filter(({ solves }) => solves === "every run").map((set) => solve(set, plan.runs))];
  const screened = screenSets(parts, whole);
  const rest = others
    .filter(({ solves }) => solves === "governing runs")
    .map((set) => solve(set, andGravityAlone(governingRuns(screened), plan.runs)));
  const { soil, concreteMpa } = scheme.basis;
  const judged = withPadSizes(
    screenSets(parts, rest, screened).map(elementResult),
    scheme.pads,
    ({ sideMm, depthMm }) =>
      padChecks({ lengthMm: sideMm, widthMm: sideMm, depthMm }, groundOf(soil, basis), concreteMpa, basis),
  );
  const results = [
    ...judged,
    ...leans.map(leanResult),
    ...skinResults(scheme, actions, basis, judged),
    ...floorResults(scheme, actions.imposed, basis),
    ...erectionResults(scheme, analysis, basis),
    ...liftResults(scheme, basis, memory),
    ...deflectionResults(scheme, analysis, actions, basis.factored, memory),
  ].toSorted(worstFirst);

  const refused = whole.flatMap((set) => set.refused);
  const { built } = first;
  const bearings = modelledBearings(built, analysis.structure.building);
  const holds = holdsNeeded(
    bearings,
    whole.flatMap(({ solved }) => solved),
    scheme.basis.friction,
  );
  const runs = plan.runs.length * whole.length;
  const units = unitVerdicts(
    { scheme, built, bearings, results, holds, refused, runs, gaps: lateralGapsOf(scheme, analysis, basis) },
    buildingReasons(actions, scheme, analysis),
  );
  const envelope = [...whole, ...rest].map(reportOf);
  const worstResidual = Math.max(...envelope.map((report) => report.worstResidual));
  return {
    accepted: true,
    units,
    results,
    holds,
    envelope,
    refusedRuns: refused.map(refusedRun),
    under: actions.site === undefined ? "gravity loads only" : "all loads",
    enlargement: plan.enlargement,
    vectors: envelope.reduce((sum, { runs: solved }) => sum + solved, 0),
    checks: checksMade(parts, [...whole, ...rest]),
    worstResidual,
    assumed,
    notJudged,
  };
}

/** None where the engineer has left sheet walls out: then his own system is asked for, and named as a reason. */
function lateralGapsOf(scheme: Scheme, { structure }: Analysis, { allowable }: StrengthBasis): LateralGap[] {
  const { sheetWalls } = scheme.basis;
  if (sheetWalls.rule === "left out") return [];
  return lateralGaps(scheme, wallsByUnit(structure, sheetWalls, allowable));
}

const leanResult = ({ unitId, run, check }: Lean): ElementResult =>
  statedResult({ ownerId: unitId, place: "lean under what stands on it", run, assumptions: softRacking.id }, check);

/** Every part against every run of its level; runs for a few owners only against theirs. */
function checksMade(parts: readonly StrengthPart[], sets: readonly SolvedSet[]): number {
  const held = new Map<string, number>();
  const heldAgainst = ({ run }: SolvedRun): number => {
    if (run.owners !== undefined) return parts.filter((part) => isHeldAgainst(part, run)).length;
    const known = held.get(run.level) ?? parts.filter(({ level }) => level === run.level).length;
    held.set(run.level, known);
    return known;
  };
  return sets.flatMap(({ solved }) => solved).reduce((sum, one) => sum + heldAgainst(one), 0);
}

const screenSets = (
  parts: readonly StrengthPart[],
  sets: readonly SolvedSet[],
  before: readonly PartWorst[] = [],
): readonly PartWorst[] => sets.reduce((found, { solved }) => screen(parts, solved, found), before);

/** Refused ones first, then by utilisation, then by name. */
function worstFirst(a: ElementResult, b: ElementResult): number {
  const [one, other] = [a.utilisation ?? Infinity, b.utilisation ?? Infinity];
  if (one !== other) return other - one;
  return a.id < b.id ? -1 : 1;
}

const reportOf = ({ set, solved, refused }: SolvedSet): SetReport => ({
  assumptions: set.id,
  runs: solved.length + refused.filter(({ held }) => held === undefined).length,
  withoutEquilibrium: refused.length,
  worstResidual: solved.reduce((worst, { residual }) => Math.max(worst, residual), 0),
});

const refusedRun = ({ run, set, refusal, held }: RefusedRun) => ({
  run: run.id,
  assumptions: set.id,
  words: refusal.refused,
  ...(held && { held }),
});
