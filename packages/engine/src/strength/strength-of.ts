import type { Scheme } from "@cornerway/schema";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { inOrder } from "../geometry/in-order.ts";
import { analyse } from "../load-path/analysis.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { assumed } from "./assumed.ts";
import { assumptionSets, type AssumptionId, type AssumptionSet } from "./assumption-sets.ts";
import { checkedParts } from "./checked-parts.ts";
import { buildingReasons } from "./building-reasons.ts";
import { elementResult, type ElementResult } from "./element-result.ts";
import { holdsNeeded, type HoldNeeded } from "./holds-needed.ts";
import { modelledBearings } from "./modelled-bearings.ts";
import { notJudged } from "./not-judged.ts";
import { schemeActions } from "./scheme-actions.ts";
import { governingRuns, screen, type PartWorst } from "./screen.ts";
import { solveRuns, type RefusedRun, type SolvedSet } from "./solve-runs.ts";
import { spreadOnRails } from "./spread-on-rails.ts";
import type { StrengthPart } from "./strength-part.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { strengthRuns, type RunPlan } from "./strength-runs.ts";
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
        readonly standsHeldDown: boolean;
      }[];
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

/**
 * Actions, model, solution over the envelope, screening of every part in every run, full working where something governs,
 * verdicts. Pure. Throws a RangeError for a scheme without containers.
 */
export function strengthOf(given: Scheme, basis: StrengthBasis, cache: CondensationCache): Strength {
  const scheme = inOrder(given);
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, basis);
  if (!actions.accepted) return actions;
  const plan = strengthRuns(actions, basis);
  const cases = plan.cases.map((action) => spreadOnRails(action, analysis.structure.building));
  const solve = (set: AssumptionSet, runs: RunPlan["runs"]) => solveRuns(analysis, cases, runs, set, cache);
  const partsIn = (built: BuiltModel) => checkedParts(analysis, built, scheme.basis, basis);

  const whole = setsThatSolve("every run").map((set) => solve(set, plan.runs));
  const screened = screenSets(whole, partsIn);
  const rest = setsThatSolve("governing runs").map((set) => solve(set, governingRuns(screened)));
  const results = screenSets(rest, partsIn, screened).map(elementResult).toSorted(worstFirst);

  const refused = whole.flatMap((set) => set.refused);
  const { built } = firstOf(whole);
  const bearings = modelledBearings(built, analysis.structure.building);
  const holds = holdsNeeded(
    bearings,
    whole.flatMap(({ solved }) => solved),
  );
  const runs = plan.runs.length * whole.length;
  const units = unitVerdicts({ scheme, built, bearings, results, holds, refused, runs }, buildingReasons(actions));
  const envelope = [...whole, ...rest].map(reportOf);
  const worstResidual = Math.max(...envelope.map((report) => report.worstResidual));
  const refusedRuns = refused.map(refusedRun);
  return { accepted: true, units, results, holds, envelope, refusedRuns, worstResidual, assumed, notJudged };
}

const setsThatSolve = (which: AssumptionSet["solves"]): AssumptionSet[] =>
  assumptionSets.filter(({ solves }) => solves === which);

/** Each set with the parts of its own model; a part goes by its name from set to set. */
const screenSets = (
  sets: readonly SolvedSet[],
  partsIn: (built: BuiltModel) => readonly StrengthPart[],
  before: readonly PartWorst[] = [],
): readonly PartWorst[] => sets.reduce((found, { built, solved }) => screen(partsIn(built), solved, found), before);

function firstOf(sets: readonly SolvedSet[]): SolvedSet {
  const [first] = sets;
  if (first === undefined) throw new Error("the envelope has a first set");
  return first;
}

/** Refused ones first, then by utilisation, then by name. */
function worstFirst(a: ElementResult, b: ElementResult): number {
  const [one, other] = [a.utilisation ?? Infinity, b.utilisation ?? Infinity];
  if (one !== other) return other - one;
  return a.id < b.id ? -1 : 1;
}

const reportOf = ({ set, solved, refused }: SolvedSet): SetReport => ({
  assumptions: set.id,
  runs: solved.length + refused.filter(({ standsHeldDown }) => !standsHeldDown).length,
  withoutEquilibrium: refused.length,
  worstResidual: solved.reduce((worst, { frame }) => Math.max(worst, frame.residual), 0),
});

const refusedRun = ({ run, set, refusal, standsHeldDown }: RefusedRun) => ({
  run: run.id,
  assumptions: set.id,
  words: refusal.refused,
  standsHeldDown,
});
