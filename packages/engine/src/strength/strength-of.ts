import type { Scheme } from "@cornerway/schema";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { inOrder } from "../geometry/in-order.ts";
import { analyse, type Analysis } from "../load-path/analysis.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { assumed } from "./assumed.ts";
import { assumptionSets, type AssumptionId, type AssumptionSet } from "./assumption-sets.ts";
import { checkedParts } from "./checked-parts.ts";
import { buildingReasons, modelReasons } from "./building-reasons.ts";
import { elementResult, type ElementResult } from "./element-result.ts";
import { holdsNeeded, type HoldNeeded } from "./holds-needed.ts";
import { modelledBearings, type ModelledBearing } from "./modelled-bearings.ts";
import { notJudged } from "./not-judged.ts";
import { schemeActions } from "./scheme-actions.ts";
import { governingRuns, screen, type PartWorst } from "./screen.ts";
import { solveRuns, type RefusedRun, type SolvedSet } from "./solve-runs.ts";
import { spreadOnRails } from "./spread-on-rails.ts";
import type { StrengthPart } from "./strength-part.ts";
import type { StrengthBasis, StrengthRequest } from "./strength-request.ts";
import { strengthRuns, type RunPlan } from "./strength-runs.ts";
import { unitStrength, type UnitStrength } from "./unit-strength.ts";

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
export function strengthOf(
  given: Scheme,
  request: StrengthRequest,
  basis: StrengthBasis,
  cache: CondensationCache,
): Strength {
  const scheme = inOrder(given);
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, request, basis);
  if (!actions.accepted) return actions;
  const plan = strengthRuns(actions, basis);
  const cases = plan.cases.map((action) => spreadOnRails(action, analysis.structure.building));
  const solve = (set: AssumptionSet, runs: RunPlan["runs"]) => solveRuns(analysis, cases, runs, set, cache);
  const partsIn = (built: BuiltModel) => checkedParts(analysis, built, request, basis);

  const whole = assumptionSets.filter(({ solves }) => solves === "every run").map((set) => solve(set, plan.runs));
  const screened = screenSets(whole, partsIn);
  const deciding = governingRuns(screened);
  const rest = assumptionSets.filter(({ solves }) => solves === "governing runs").map((set) => solve(set, deciding));
  const worsts = screenSets(rest, partsIn, screened);

  const sets = [...whole, ...rest];
  const results = worsts.map(elementResult).toSorted(worstFirst);
  const holds = whole.slice(0, 1).flatMap(({ built }) =>
    holdsNeeded(
      bearingsIn(analysis, built),
      whole.flatMap(({ solved }) => solved),
    ),
  );
  const refused = whole.flatMap((set) => set.refused);
  const runs = plan.runs.length * whole.length;
  const ofBuilding = buildingReasons(actions);
  const [base] = whole;
  const units = scheme.containers.map(({ id }) =>
    unitStrength({
      unitId: id,
      results: results.filter(({ ownerId }) => ownerId === id || padsUnder(id, analysis, base).has(ownerId)),
      holds: holds.filter(({ ownerId }) => ownerId === id),
      refused,
      runs,
      withSteel: hasSteel(scheme, id) || (base?.built.plan.inWalls.has(id) ?? false),
      given: [...ofBuilding, ...modelReasons(id, base?.built.notes ?? [], scheme)],
    }),
  );
  const envelope = sets.map(reportOf);
  return {
    accepted: true,
    units,
    results,
    holds,
    envelope,
    refusedRuns: refused.map(refusedRun),
    worstResidual: Math.max(...envelope.map(({ worstResidual }) => worstResidual)),
    assumed,
    notJudged,
  };
}

/** Each set with the parts of its own model; a part goes by its name from set to set. */
const screenSets = (
  sets: readonly SolvedSet[],
  partsIn: (built: BuiltModel) => readonly StrengthPart[],
  before: readonly PartWorst[] = [],
): readonly PartWorst[] => sets.reduce((found, { built, solved }) => screen(partsIn(built), solved, found), before);

const bearingsIn = ({ structure }: Analysis, built: BuiltModel): ModelledBearing[] =>
  modelledBearings(built, structure.building);

function padsUnder(unitId: string, analysis: Analysis, base: SolvedSet | undefined): Set<string> {
  const bearings = base === undefined ? [] : bearingsIn(analysis, base.built);
  return new Set(
    bearings.flatMap(({ ownerId, planned: { below } }) =>
      ownerId === unitId && "ground" in below ? [below.ground] : [],
    ),
  );
}

const hasSteel = ({ openings }: Scheme, unitId: string): boolean =>
  openings.some(({ containerId, framed }) => containerId === unitId && framed);

const worstFirst = (a: ElementResult, b: ElementResult): number =>
  (b.utilisation ?? Infinity) === (a.utilisation ?? Infinity)
    ? a.id < b.id
      ? -1
      : 1
    : (b.utilisation ?? Infinity) - (a.utilisation ?? Infinity);

const reportOf = ({ solved, refused }: SolvedSet, at: number): SetReport => ({
  assumptions: solved[0]?.set.id ?? refused[0]?.set.id ?? assumptionSets[at]?.id ?? "locks at play",
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
