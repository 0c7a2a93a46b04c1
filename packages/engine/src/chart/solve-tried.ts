import type { PlacedUnit } from "../model/building-model.ts";
import type { AssumptionSet } from "../strength/assumption-sets.ts";
import type { ModelledBearing } from "../strength/modelled-bearings.ts";
import { smallMovements } from "../strength/small-movements.ts";
import type { SolvedRun } from "../strength/solve-runs.ts";
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
 * of that container and of those besides are told.
 */
export function solveTried(
  { unit, besides, bearings, set, solver }: TriedBuilding,
  groups: readonly HeldRuns[],
  insides: OwnInsides,
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
  const told = new Map(
    // where nothing stands, something inside may move
    (standing.length === 0 ? [] : [unit, ...besides]).map((one) => [
      one.id,
      insides.forces(
        one,
        standing.map(({ run, combination }) => ({ factors: run.factors, retained: combination.retainedIn(one.id) })),
      ),
    ]),
  );
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
