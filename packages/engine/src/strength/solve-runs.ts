import type { CondensationCache } from "../analysis/condensation-cache.ts";
import type { FrameRefusal, FrameSolution } from "../analysis/frame-result.ts";
import type { UnitSolution } from "../analysis/recover-unit.ts";
import { buildingSolver, type BuildingAnswer, type BuildingSolver } from "../building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import { buildModel, type BuiltModel } from "../model/build-model.ts";
import type { BuildingModel, PlacedUnit } from "../model/building-model.ts";
import type { AssumptionSet } from "./assumption-sets.ts";
import { modelledBearings, type ModelledBearing } from "./modelled-bearings.ts";
import { smallMovements } from "./small-movements.ts";
import { heldNext, type Fallen, type HeldGroup } from "./held-groups.ts";
import type { StrengthRun } from "./run-plan.ts";
import type { KeptForces } from "./kept-forces.ts";
import type { OwnInsides } from "./own-forces.ts";
import { ForcesOfRuns } from "./forces-of-runs.ts";
import { UnitForces, type InsideForces, type InsideStores, type Loaded } from "./unit-forces.ts";

/** What is kept from one solution to the next. */
export type StrengthMemory = InsideStores & {
  readonly cache: CondensationCache;
  readonly forces: KeptForces;
  /** Where so few runs are solved that insides of a fabric that is new are recovered for each of them, and not kept. */
  readonly fewRuns?: OwnInsides;
};

/** Forces of lines: nine of each from `at` its name on. */
export type LineForces = {
  readonly values: Float64Array | readonly number[];
  readonly at: (id: string) => number;
};

/** Flows of sheets, N/mm: the one of each at `panelAt` its name. */
export type SheetFlows = { readonly values: Float64Array; readonly panelAt: (id: string) => number };

/** One run under one set of assumptions. `held`: units and posts it takes to be held by their bearings; else it falls. */
export type SolvedRun = {
  readonly run: StrengthRun;
  readonly set: AssumptionSet;
  readonly held: readonly string[];
  readonly frame: FrameSolution;
  /** Three forces on what stands on a link (by its id) or a support (by its node), N, global axes. */
  readonly bearing: (name: string) => readonly [number, number, number];
  /** Largest unbalanced force over the largest load. */
  readonly residual: number;
  /** Its gravity loads by themselves, where they stand; undefined for runs without level loads. */
  readonly gravityAlone: () => SolvedRun | undefined;
  /** Six movements of every node between the containers, mm and radians, global axes, in the order of `nodeIds`. */
  readonly movement: Float64Array;
  readonly nodeIds: readonly string[];
  /** Forces of lines inside a container, valid until another run is asked for; so are the flows of its sheets. */
  readonly inner: (unitId: string) => LineForces;
  readonly flows: (unitId: string) => SheetFlows;
  /** Everything inside a container, movements as well, recovered when it is asked for. */
  readonly inside: (unitId: string) => UnitSolution;
  /** Steel that belongs to no container. */
  readonly between: () => LineForces;
  readonly loaded: Standing;
  /** The same run where others are looked at after it than those that were solved after it. */
  readonly followedBy: (next: (places: number) => SolvedRun | undefined) => SolvedRun;
};

export type SolvedSet = {
  readonly set: AssumptionSet;
  readonly built: BuiltModel;
  readonly solved: readonly SolvedRun[];
  /** Runs without equilibrium as drawn, with what moves. */
  readonly refused: readonly RefusedRun[];
};

export type RefusedRun = {
  readonly run: StrengthRun;
  readonly set: AssumptionSet;
  readonly refusal: FrameRefusal;
  /** What had to be held for it to stand; undefined where nothing made it stand. */
  readonly held?: readonly string[];
};

/**
 * Solves these runs with contact. One without equilibrium is solved again with what moves held by its bearings, and again
 * with what moves then: its forces say what connections there must carry, never that the scheme works as drawn.
 * `sameLoads`: a model of the same scheme under these cases, or more.
 */
export function solveRuns(
  analysis: Analysis,
  cases: readonly ActionCase[],
  runs: readonly StrengthRun[],
  set: AssumptionSet,
  memory: StrengthMemory,
  sameLoads?: BuildingModel,
): SolvedSet {
  const used = new Set(runs.flatMap(({ factors }) => Object.keys(factors)));
  const acting = cases.filter(({ id }) => used.has(id));
  const built = buildModel(analysis, acting, {}, set.assumptions, sameLoads);
  return solveBuilt(built, modelledBearings(built, analysis.structure.building), runs, set, memory);
}

/** The same on a model that is built, with its bearings. */
export function solveBuilt(
  built: BuiltModel,
  bearings: readonly ModelledBearing[],
  runs: readonly StrengthRun[],
  set: AssumptionSet,
  memory: StrengthMemory,
): SolvedSet {
  const solver = buildingSolver(built.model, memory.cache);
  const standing = new Map<string, Standing>();
  const first = new Map<string, FrameRefusal>();
  const all = everything(built);
  let waiting: readonly HeldGroup[] = [{ held: [], runs }];
  for (let round = 1; waiting.length > 0; round++) {
    const fallen: Fallen[] = [];
    for (const { held, runs: group } of waiting) {
      const answers = solveGroup(solver, group, bearingsOf(held, bearings));
      for (const run of group) {
        const answer = answers.get(run.id);
        if (answer === undefined) throw new Error(`run ${run.id} has no answer`);
        if (!("refused" in answer)) {
          standing.set(run.id, { token: {}, run, held, solved: answer, factors: run.factors });
          continue;
        }
        if (!first.has(run.id)) first.set(run.id, answer);
        fallen.push({ run, held, moving: answer.moves.nodes.map(ownerOf) });
      }
    }
    waiting = heldNext(fallen, all, round >= ROUNDS - 1);
  }
  const stand = runs.flatMap(({ id }) => standing.get(id) ?? []);
  const solved = solvedRuns(stand, set, insideOf(built.model, memory));
  return { set, built, solved, refused: refusedOf(runs, set, first, standing) };
}

/** A run that stands with these bearings held. */
export type Standing = Loaded & { readonly run: StrengthRun; readonly held: readonly string[] };

/** As drawn, with what moves held, with what moves then, and at last with everything held. */
const ROUNDS = 4;

const everything = ({ model, plan }: BuiltModel): string[] => [
  ...model.units.map(({ id }) => id),
  ...plan.freePosts,
  ...plan.beams,
];

const ownerOf = (node: string): string => node.slice(0, node.indexOf(":"));

/** Names of the bearings of these units and posts. */
function bearingsOf(owners: readonly string[], bearings: readonly ModelledBearing[]): Set<string> {
  return new Set(bearings.filter(({ ownerId }) => owners.includes(ownerId)).map(({ name }) => name));
}

function solveGroup(
  solver: BuildingSolver,
  runs: readonly StrengthRun[],
  held: ReadonlySet<string>,
): Map<string, BuildingAnswer> {
  const answers = solver(Object.fromEntries(runs.map(({ id, factors }) => [id, factors])), held);
  return new Map([...answers].map(([id, answer]) => [id, smallMovements(answer)]));
}

function solvedRuns(
  standing: readonly Standing[],
  set: AssumptionSet,
  inside: (unitId: string) => InsideForces,
): SolvedRun[] {
  const byId = new Map<string, SolvedRun>();
  const all = standing.map((one, n): SolvedRun => {
    let steel: LineForces | undefined;
    const between = (): LineForces => (steel ??= betweenOf(one.solved.frame));
    return solvedRun(one, { set, inside, byId, between }, (places) => standing[n + places]);
  });
  for (const one of all) byId.set(one.run.id, one);
  return all;
}

/** What a solved run is told from, beside its solution. */
type Ground = {
  readonly set: AssumptionSet;
  readonly inside: (unitId: string) => InsideForces;
  readonly byId: ReadonlyMap<string, SolvedRun>;
  readonly between: () => LineForces;
};

/** `after`: the runs that are looked at after it. */
function solvedRun(one: Standing, ground: Ground, after: (places: number) => Standing | undefined): SolvedRun {
  const { run, held, solved } = one;
  // parts look at runs of one level
  const alike = (places: number): Standing | undefined => {
    const other = after(places);
    return other?.run.level === run.level ? other : undefined;
  };
  return {
    run,
    set: ground.set,
    held,
    loaded: one,
    get frame() {
      return solved.frame;
    },
    bearing: (name) => solved.bearing(name),
    get residual() {
      return solved.residual;
    },
    gravityAlone: () => (run.gravityAlone === undefined ? undefined : ground.byId.get(run.gravityAlone)),
    movement: solved.movement,
    nodeIds: solved.nodeIds,
    inner: (unitId) => {
      const forces = ground.inside(unitId);
      return { values: forces.under(one, alike), at: forces.at };
    },
    flows: (unitId) => {
      const forces = ground.inside(unitId);
      return { values: forces.flowsUnder(one, alike), panelAt: forces.panelAt };
    },
    inside: (unitId) => solved.unit(unitId),
    between: ground.between,
    followedBy: (next) => solvedRun(one, ground, (places) => next(places)?.loaded),
  };
}

/** Runs to be looked at one after another: forces inside containers are worked out for several of them at once. */
export const inThisOrder = (runs: readonly SolvedRun[]): SolvedRun[] =>
  runs.map((one, n) => one.followedBy((places) => runs[n + places]));

function betweenOf({ memberEndForces }: FrameSolution): LineForces {
  const places = new Map(Object.keys(memberEndForces).map((id, n) => [id, n * ENDS_OF_MEMBER]));
  return { values: Object.values(memberEndForces).flat(), at: (id) => places.get(id) ?? NaN };
}

const ENDS_OF_MEMBER = 12;

/**
 * Makes the insides of containers ready where they are to be looked at anyway: container by container, while the elements of
 * each are at hand from condensing it.
 */
export function insidesAtHand(model: BuildingModel, memory: StrengthMemory): void {
  for (const unit of model.units)
    if (memory.cache.part(unit.fragment).stable && isKept(unit, memory)) keptInside(unit, memory);
}

/** The inside of each container is made ready when it is first asked for, and stays so as long as the container is there. */
function insideOf(model: BuildingModel, memory: StrengthMemory): (unitId: string) => InsideForces {
  const units = new Map(model.units.map((unit) => [unit.id, unit]));
  const recovered = new Map<string, InsideForces>();
  return (unitId) => {
    const unit = units.get(unitId);
    if (unit === undefined) throw new RangeError(`the model has no container ${unitId}`);
    if (memory.fewRuns === undefined || isKept(unit, memory)) return keptInside(unit, memory);
    const forces = recovered.get(unitId) ?? new ForcesOfRuns(unit, memory.fewRuns);
    recovered.set(unitId, forces);
    return forces;
  };
}

const isKept = ({ fragment }: PlacedUnit, { fewRuns, influences }: StrengthMemory): boolean =>
  fewRuns === undefined || influences.has(fragment.key);

/** The inside of a container, kept as long as it is there. */
export const keptInside = (unit: PlacedUnit, memory: StrengthMemory): UnitForces =>
  memory.forces.take(unit, () => new UnitForces(unit, memory.cache, memory));

function refusedOf(
  runs: readonly StrengthRun[],
  set: AssumptionSet,
  refusals: ReadonlyMap<string, FrameRefusal>,
  standing: ReadonlyMap<string, Standing>,
): RefusedRun[] {
  return runs.flatMap((run) => {
    const refusal = refusals.get(run.id);
    if (refusal === undefined) return [];
    const held = standing.get(run.id)?.held;
    return [{ run, set, refusal, ...(held && { held }) }];
  });
}
