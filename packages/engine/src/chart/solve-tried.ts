import { buildingSolver, type BuildingCombination } from "../building.ts";
import type { BuildingModel, PlacedUnit } from "../model/building-model.ts";
import type { AssumptionSet } from "../strength/assumption-sets.ts";
import type { ModelledBearing } from "../strength/modelled-bearings.ts";
import { smallMovements } from "../strength/small-movements.ts";
import type { SolvedRun, StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthRun } from "../strength/strength-runs.ts";
import { ownForces, type OwnForces } from "./own-forces.ts";

/** Runs that stood with the same bearings held, when the building was solved whole. */
export type HeldRuns = { readonly held: readonly string[]; readonly runs: readonly StrengthRun[] };

/** What was solved, and the runs that no longer stand as they did. */
export type TriedRuns = { readonly solved: readonly SolvedRun[]; readonly fallen: readonly StrengthRun[] };

/** Solves runs on a building in which one container was changed, held as they were before; its own forces alone are told. */
export function solveTried(
  model: BuildingModel,
  unit: PlacedUnit,
  bearings: readonly ModelledBearing[],
  groups: readonly HeldRuns[],
  set: AssumptionSet,
  { cache }: StrengthMemory,
): TriedRuns {
  const solver = buildingSolver(model, cache);
  const standing: Standing[] = [];
  const fallen: StrengthRun[] = [];
  for (const { held, runs } of groups) {
    const names = new Set(bearings.filter(({ ownerId }) => held.includes(ownerId)).map(({ name }) => name));
    const answers = solver(Object.fromEntries(runs.map(({ id, factors }) => [id, factors])), names);
    for (const run of runs) {
      const answer = answers.get(run.id);
      if (answer === undefined) throw new Error(`run ${run.id} has no answer`);
      const combination = smallMovements(answer);
      if ("refused" in combination) fallen.push(run);
      else standing.push({ run, held, combination });
    }
  }
  const inside = ownForces(
    unit,
    standing.map(({ run, combination }) => ({ factors: run.factors, retained: combination.retainedIn(unit.id) })),
    cache,
  );
  return { solved: standing.map((one, n) => solvedRun(one, set, unit.id, inside[n])), fallen };
}

type Standing = {
  readonly run: StrengthRun;
  readonly held: readonly string[];
  readonly combination: BuildingCombination;
};

function solvedRun(
  { run, held, combination }: Standing,
  set: AssumptionSet,
  ownId: string,
  own: OwnForces | undefined,
): SolvedRun {
  const told = (unitId: string): OwnForces => {
    if (unitId !== ownId || own === undefined) throw new RangeError(`forces inside ${unitId} are not told here`);
    return own;
  };
  return {
    run,
    set,
    held,
    get frame() {
      return combination.frame;
    },
    bearing: (name) => combination.bearing(name),
    residual: combination.residual,
    movement: combination.movement,
    nodeIds: combination.nodeIds,
    inner: told,
    flows: told,
    between: () => {
      throw new RangeError("steel between the containers is not told here");
    },
  };
}
