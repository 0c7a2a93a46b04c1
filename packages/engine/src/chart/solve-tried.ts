import type { PlacedUnit } from "../model/building-model.ts";
import type { AssumptionSet } from "../strength/assumption-sets.ts";
import type { ModelledBearing } from "../strength/modelled-bearings.ts";
import { smallMovements } from "../strength/small-movements.ts";
import { keptInside, type SolvedRun, type StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthRun } from "../strength/run-plan.ts";
import type { OwnForces, OwnInsides } from "../strength/own-forces.ts";
import type { TriedCombination } from "./rest-of-building.ts";
import type { HeldRuns, TriedSolver } from "./surroundings.ts";

/** What was solved, and the runs that do not stand even with all bearings held. */
export type TriedRuns = { readonly solved: readonly SolvedRun[]; readonly fallen: readonly StrengthRun[] };

/** A building in which one container was changed, ready to be solved for any runs. */
export type TriedBuilding = {
  readonly unit: PlacedUnit;
  /** Others whose forces are told as well. */
  readonly besides: readonly PlacedUnit[];
  readonly bearings: readonly ModelledBearing[];
  readonly set: AssumptionSet;
  readonly solver: TriedSolver;
};

/**
 * Solves runs held as they were before the container was changed; those that no longer stand so with all bearings held. Forces
 * of that container are recovered from its movements; those besides stay as they are, so theirs are told by the influence of
 * each bearing point, which is worked out once.
 */
export function solveTried(
  { unit, besides, bearings, set, solver }: TriedBuilding,
  groups: readonly HeldRuns[],
  insides: OwnInsides,
  memory: StrengthMemory,
): TriedRuns {
  const standing: Standing[] = [];
  const solve = (group: HeldRuns): StrengthRun[] => {
    const answers = solver(group);
    return group.runs.filter((run) => {
      const answer = answers.get(run.id);
      if (answer === undefined) throw new Error(`run ${run.id} has no answer`);
      const combination = smallMovements(answer);
      if ("refused" in combination) return true;
      standing.push({ run, held: group.held, combination });
      return false;
    });
  };
  const everything = [...new Set(bearings.map(({ ownerId }) => ownerId))];
  const loose = groups.map((group): HeldRuns => ({ ...group, held: everything, runs: solve(group) }));
  const fallen = loose.flatMap((group) => (group.runs.length === 0 ? [] : solve(group)));
  const told = new Map<string, readonly OwnForces[]>();
  // where nothing stands, something inside may move
  if (standing.length > 0) {
    const sides = standing.map(({ run, combination }) => ({
      factors: run.factors,
      retained: combination.retainedIn(unit.id),
    }));
    told.set(unit.id, insides.forces(unit, sides));
    for (const one of besides) told.set(one.id, forcesBeside(one, standing, memory));
  }
  const byId = new Map<string, SolvedRun>();
  const solved = standing.map((one, n) => solvedRun(one, set, (unitId) => told.get(unitId)?.[n], byId));
  for (const one of solved) byId.set(one.run.id, one);
  return { solved, fallen };
}

type Standing = {
  readonly run: StrengthRun;
  readonly held: readonly string[];
  readonly combination: TriedCombination;
};

function forcesBeside(unit: PlacedUnit, standing: readonly Standing[], memory: StrengthMemory): OwnForces[] {
  const inside = keptInside(unit, memory);
  const asked = standing.map(({ run, combination }) => ({ token: {}, solved: combination, factors: run.factors }));
  return asked.map((one, n): OwnForces => {
    const after = (places: number) => asked[n + places];
    const lines = inside.under(one, after).slice();
    const flows = inside.flowsUnder(one, after);
    const values = new Float64Array(lines.length + flows.length);
    values.set(lines);
    values.set(flows, lines.length);
    return { values, at: inside.at, panelAt: (id) => lines.length + inside.panelAt(id) };
  });
}

function solvedRun(
  { run, held, combination }: Standing,
  set: AssumptionSet,
  inside: (unitId: string) => OwnForces | undefined,
  byId: ReadonlyMap<string, SolvedRun>,
): SolvedRun {
  const told = (unitId: string): OwnForces => inside(unitId) ?? untold(`the inside of ${unitId}`);
  return {
    run,
    set,
    held,
    get frame() {
      return untold("what joins the containers");
    },
    bearing: (name) => combination.bearing(name),
    residual: combination.residual,
    gravityAlone: () => (run.gravityAlone === undefined ? undefined : byId.get(run.gravityAlone)),
    movement: combination.movement,
    nodeIds: combination.nodeIds,
    inner: told,
    flows: told,
    inside: (unitId) => untold(`the inside of ${unitId}`),
    between: () => untold("steel between the containers"),
    get loaded() {
      return untold("the whole solution");
    },
    followedBy: () => untold("what is looked at after a run"),
  };
}

function untold(what: string): never {
  throw new RangeError(`${what} is not told here`);
}
