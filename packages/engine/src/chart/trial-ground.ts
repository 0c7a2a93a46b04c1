import type { Opening, Scheme } from "@cornerway/schema";
import { fabricOf } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { inOrder } from "../geometry/in-order.ts";
import { analyse, type Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import { buildModel, type BuiltModel } from "../model/build-model.ts";
import { assumptionSets, softRacking, type AssumptionSet } from "../strength/assumption-sets.ts";
import { modelledBearings, type ModelledBearing } from "../strength/modelled-bearings.ts";
import { schemeActions } from "../strength/scheme-actions.ts";
import { andGravityAlone } from "../strength/gravity-alone.ts";
import { governingRuns, screen } from "../strength/screen.ts";
import { groundsOf, solveSettling, type Ground } from "../strength/settling.ts";
import { OwnInsides } from "../strength/own-forces.ts";
import { partsMadeWith } from "../strength/parts-made.ts";
import { onSoftPads } from "../strength/soft-pads.ts";
import { solveRuns, type SolvedSet, type StrengthMemory } from "../strength/solve-runs.ts";
import { spreadOnRails } from "../strength/spread-on-rails.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import type { StrengthRun } from "../strength/run-plan.ts";
import { strengthRuns } from "../strength/strength-runs.ts";
import { leansOf, swayFactor, type Lean } from "../strength/sway.ts";
import { enlarged, swayRuns, type SwayRuns } from "../strength/sway-runs.ts";
import type { ChartRefusal, ChartRequest } from "./chart.ts";
import { Surroundings, type HeldRuns } from "./surroundings.ts";
import { touches } from "./touches.ts";
import { triedParts } from "./tried-parts.ts";
import { withTried } from "./trial-opening.ts";

/**
 * The building a chart is traced on: solved once, with the opening at one place and width, for every run. What governs there
 * is what every other place and width is solved for.
 */
export type TrialGround = {
  readonly request: ChartRequest;
  /** With the opening it was solved with. */
  readonly scheme: Scheme;
  readonly analysis: Analysis;
  readonly unit: Unit;
  /** Openings of the other units. */
  readonly otherOpenings: readonly Opening[];
  readonly cases: readonly ActionCase[];
  readonly sets: readonly TrialSet[];
  /** Runs from which the building's lean is found, with walls at their softest. */
  readonly sway: SwayRuns | undefined;
  /** How its units lean with the opening in its first place. */
  readonly leans: readonly Lean[];
  readonly bearings: readonly ModelledBearing[];
  /** Bearings of the unit, from above and from below. */
  readonly ownBearings: readonly ModelledBearing[];
  /** Units on which it bears or that bear on it. */
  readonly neighbours: readonly string[];
  readonly basis: StrengthBasis;
  readonly memory: StrengthMemory;
  /** Of the unit as tried last under each set. */
  readonly insides: OwnInsides;
  readonly under: "gravity loads only" | "all loads";
  /** Every run under the first set, for the forces that are drawn. */
  readonly whole: SolvedSet;
};

/** One set of assumptions with its model and the runs that govern, before the building's lean enlarges them. */
export type TrialSet = {
  readonly set: AssumptionSet;
  readonly built: BuiltModel;
  /** By what was held when the building was solved whole: under other assumptions as under the first. */
  readonly groups: readonly HeldRuns[];
  /** The building round the unit, as far as it is known. */
  readonly around: Surroundings;
};

export type GroundAnswer = { readonly accepted: true; readonly ground: TrialGround } | ChartRefusal;

/** Solves a building whole for a chart, with the opening at one place and width, mm. */
export function trialGround(
  given: Scheme,
  request: ChartRequest,
  at: { readonly centreMm: number; readonly widthMm: number },
  basis: StrengthBasis,
  memory: StrengthMemory,
): GroundAnswer {
  const scheme = inOrder(withTried(given, request, at.centreMm, at.widthMm));
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, basis);
  if (!actions.accepted) return actions;
  const { building } = analysis.structure;
  const unit = building.unitById.get(request.containerId);
  if (unit === undefined) throw new RangeError(`no container ${request.containerId} in this scheme`);
  const firstOrder = strengthRuns(actions, basis, analysis);
  const cases = firstOrder.cases.map((action) => spreadOnRails(action, building));
  const sway = swayRuns(firstOrder, actions.building);
  const leans = leansUnder(sway, analysis, cases, basis, memory);
  const plan = enlarged(firstOrder, swayFactor(leans));
  const [base] = assumptionSets;
  const first = solveSettling(analysis, cases, plan.runs, base, memory);
  const bearings = modelledBearings(first.built, building);
  const ownBearings = bearings.filter((bearing) => touches(bearing, request.containerId));
  const whole = assumptionSets.map((set) => {
    if (set === base) return first;
    return set.solves === "every run"
      ? solveSettling(analysis, cases, plan.runs, set, memory, first.built.model)
      : undefined;
  });
  const neighbours = neighboursOf(ownBearings, unit.id);
  const parts = triedParts(analysis, first.built, { unit, besides: neighbours }, scheme, basis, partsMadeWith(memory));
  const screened = whole.reduce((found, set) => screen(parts, set?.solved ?? [], found), screen(parts, []));
  const governing = new Set(andGravityAlone(governingRuns(screened), plan.runs).map(({ id }) => id));
  const runs = firstOrder.runs.filter(({ id }) => governing.has(id));
  const acting = new Set([...runs, ...swaying(sway)].flatMap(({ factors }) => Object.keys(factors)));
  const used = cases.filter(({ id }) => acting.has(id));
  const sets = assumptionSets.map((set, n): TrialSet => {
    const onRigid = buildModel(analysis, used, {}, set.assumptions, first.built.model);
    const built = set.pads === "soft" ? onSoftPads(onRigid, bearings, building.padById) : onRigid;
    const groups = groupsOf(whole[n] ?? first, runs, groundsOf(used, built.model));
    return { set, built, groups, around: new Surroundings(built.model, unit.id, bearings, memory.cache) };
  });
  const under = actions.site === undefined ? "gravity loads only" : "all loads";
  const otherOpenings = scheme.openings.filter(({ containerId }) => containerId !== unit.id);
  const insides = new OwnInsides(memory.cache, sets.length);
  const solved = { insides, sets, sway, leans, bearings, ownBearings, neighbours, whole: first, under } as const;
  return {
    accepted: true,
    ground: { request, scheme, analysis, unit, otherOpenings, cases: used, basis, memory, ...solved },
  };
}

function neighboursOf(ownBearings: readonly ModelledBearing[], unitId: string): string[] {
  const joined = ownBearings.flatMap(({ planned: { above, below } }) => [
    ...("unitId" in above ? [above.unitId] : []),
    ...("point" in below ? [below.point.unitId] : []),
  ]);
  return [...new Set(joined)].filter((id) => id !== unitId);
}

export const swaying = (sway: SwayRuns | undefined): readonly StrengthRun[] =>
  sway === undefined ? [] : [sway.upright, ...sway.pushed];

/** How the units lean with the opening in its first place. */
function leansUnder(
  sway: SwayRuns | undefined,
  analysis: Analysis,
  cases: readonly ActionCase[],
  { factored }: StrengthBasis,
  memory: StrengthMemory,
): Lean[] {
  if (sway === undefined) return [];
  const { built, solved } = solveRuns(analysis, cases, swaying(sway), softRacking, memory);
  const [upright, ...pushed] = solved;
  if (upright?.run.id !== sway.upright.id) return [];
  const bearings = modelledBearings(built, analysis.structure.building);
  return leansOf(built.model.units, bearings, upright, pushed, factored);
}

/** Runs by what had to be held for them to stand; those that nothing made stand are left out. */
function groupsOf(
  { solved }: SolvedSet,
  runs: readonly StrengthRun[],
  groundOf: (run: StrengthRun) => Ground,
): HeldRuns[] {
  const heldBy = new Map(solved.map(({ run, held }) => [run.id, held]));
  const groups = new Map<string, HeldRuns & { runs: StrengthRun[] }>();
  for (const run of runs) {
    const held = heldBy.get(run.id);
    if (held === undefined) continue;
    const ground = groundOf(run);
    const key = `${ground}: ${held.join(" ")}`;
    const group = groups.get(key) ?? { held, runs: [], ground };
    group.runs.push(run);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** The analysis with other openings in one unit: what bears on what does not hang on them. */
export function analysisWith(analysis: Analysis, unit: Unit): Analysis {
  const { structure } = analysis;
  const fabric = fabricOf(unit);
  const { building } = structure;
  return {
    ...analysis,
    structure: {
      ...structure,
      building: {
        ...building,
        units: building.units.map((one) => (one.id === unit.id ? unit : one)),
        unitById: new Map(building.unitById).set(unit.id, unit),
      },
      fabric: (unitId: string) => (unitId === unit.id ? fabric : structure.fabric(unitId)),
    },
  };
}
