import type { Scheme } from "@cornerway/schema";
import { inOrder } from "../geometry/in-order.ts";
import { withKnownElements } from "../geometry/known-elements.ts";
import { analyse, type Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import type { SiteActions } from "../loads/site-actions.ts";
import { softRacking } from "./assumption-sets.ts";
import { modelledBearings } from "./modelled-bearings.ts";
import { schemeActions } from "./scheme-actions.ts";
import { solveRuns, type StrengthMemory } from "./solve-runs.ts";
import { spreadOnRails } from "./spread-on-rails.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { RunPlan } from "./run-plan.ts";
import { strengthRuns } from "./strength-runs.ts";
import { leansOf, swayFactor, type Lean } from "./sway.ts";
import { enlarged, swayRuns } from "./sway-runs.ts";

/** Why nothing can be said of a scheme. */
type Refused = { readonly accepted: false; readonly refusals: readonly HazardRefusal[] };

/** What acts on a scheme and every run of it, before it is known how it leans. */
export type StrengthGround = {
  readonly accepted: true;
  readonly scheme: Scheme;
  readonly analysis: Analysis;
  readonly actions: Extract<SiteActions, { accepted: true }>;
  readonly cases: readonly ActionCase[];
  readonly firstOrder: RunPlan;
};

/** All that is to be solved of a scheme, before anything but its lean is. */
export type StrengthPlan =
  | Refused
  | (StrengthGround & {
      readonly leans: readonly Lean[];
      /** How many times as large level loads are for the building's lean. */
      readonly enlargement: number;
      readonly runs: RunPlan["runs"];
    });

/**
 * Actions, combinations, and level loads enlarged by the building's own lean, or by an `enlargement` that is given: then it is
 * not asked how the building leans. Throws a RangeError for a scheme without containers.
 */
export function strengthPlan(
  given: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  enlargement?: number,
): StrengthPlan {
  const ground = strengthGround(given, basis);
  if (!ground.accepted) return ground;
  const leans = enlargement === undefined ? leansOn(ground, basis, memory) : [];
  const times = enlargement ?? swayFactor(leans);
  return { ...ground, leans, enlargement: times, runs: enlarged(ground.firstOrder, times).runs };
}

/** Actions and combinations. Throws a RangeError for a scheme without containers. */
export function strengthGround(given: Scheme, basis: StrengthBasis): Refused | StrengthGround {
  const scheme = withKnownElements(inOrder(given));
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, basis);
  if (!actions.accepted) return actions;
  const firstOrder = strengthRuns(actions, basis, analysis);
  const cases = firstOrder.cases.map((action) => spreadOnRails(action, analysis.structure.building));
  return { accepted: true, scheme, analysis, actions, cases, firstOrder };
}

/** The building's lean from a solution of its own, walls at their softest, before level loads are enlarged by it. */
export function leansOn(
  { analysis, actions, cases, firstOrder }: StrengthGround,
  { factored }: StrengthBasis,
  memory: StrengthMemory,
): Lean[] {
  const runs = swayRuns(firstOrder, actions.building);
  if (runs === undefined) return [];
  const { built, solved } = solveRuns(analysis, cases, [runs.upright, ...runs.pushed], softRacking, memory);
  const [upright, ...pushed] = solved;
  if (upright?.run.id !== runs.upright.id) return [];
  return leansOf(built.model.units, modelledBearings(built, analysis.structure.building), upright, pushed, factored);
}
