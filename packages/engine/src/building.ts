import { buildingLoads } from "./analysis/building-loads.ts";
import { buildingSystem, type BuildingSystem } from "./analysis/building-system.ts";
import { CondensationCache } from "./analysis/condensation-cache.ts";
import { settleContact, type ContactOutcome } from "./analysis/contact.ts";
import type { CombinedLoads } from "./analysis/combined-loads.ts";
import { drivenMovement } from "./analysis/driven-movement.ts";
import type { FrameRefusal, FrameSolution } from "./analysis/frame-result.ts";
import { prepare } from "./analysis/prepare.ts";
import { recoverFrame } from "./analysis/recover-frame.ts";
import { Insides } from "./analysis/insides.ts";
import type { UnitSolution } from "./analysis/recover-unit.ts";
import { bearingStates } from "./analysis/bearing-states.ts";
import { refusal } from "./analysis/refusal.ts";
import { solveMovements } from "./analysis/solve-movement.ts";
import { allClosed } from "./analysis/system.ts";
import { unresistedLoad } from "./analysis/unresisted-load.ts";
import type { BuildingModel } from "./model/building-model.ts";
import { withHolds } from "./model/plan-holds.ts";
import { liftedNames } from "./analysis/planned-holds.ts";

export interface BuildingCombination {
  /** Everything between the containers: their retained nodes, links, supports and added steel. */
  readonly frame: FrameSolution;
  /** The inside of one container, computed when asked for. */
  readonly unit: (id: string) => UnitSolution;
}

export interface BuildingResult {
  readonly combos: Readonly<Record<string, BuildingCombination | FrameRefusal>>;
}

/** A cache for `solveBuilding`; 256 distinct containers take about 300 MB. */
export function condensationCache(limitBytes: number): CondensationCache {
  return new CondensationCache(limitBytes);
}

/**
 * Solves a building container by container: each is condensed to the nodes where it touches others (through the cache), the
 * building is solved on those with contact, and the inside is recovered on demand. Units N, mm, MPa, radians.
 */
export function solveBuilding(model: BuildingModel, cache: CondensationCache): BuildingResult {
  const assembly = buildingSystem(model, cache);
  const names = Object.keys(model.combos);
  if (!assembly.stable) {
    const [movement = null] = assembly.movements;
    const refused = refusal("No equilibrium, a mechanism inside a container", movement, assembly.nodeIds);
    return { combos: Object.fromEntries(names.map((name) => [name, refused])) };
  }
  return { combos: Object.fromEntries(solveCombinations(model, assembly.building, cache)) };
}

function solveCombinations(
  model: BuildingModel,
  building: BuildingSystem,
  cache: CondensationCache,
): [string, BuildingCombination | FrameRefusal][] {
  const combos = Object.entries(model.combos);
  const loads = combos.map(([, combo]) => buildingLoads(building, combo));
  const { frame } = building;
  const closed = prepare(frame.system, allClosed(frame.system), cache.building);
  if (!closed.stable)
    return combos.map(([name], s) => {
      const movement = drivenMovement(closed.movements, loads[s] ?? missing());
      return [name, refusal("No equilibrium, a mechanism", movement, frame.nodeIds)];
    });
  const bases = solveMovements(closed.prepared, loads);
  const states = bearingStates(frame.system, cache.building.branch());
  const outcomes = settleContact(frame.system, closed.prepared, loads, bases, states);
  const solved = outcomes.flatMap((outcome, s) =>
    outcome.settled ? [{ combo: combos[s]?.[1] ?? missing(), movement: outcome.result.movement }] : [],
  );
  const insides = new Insides(building.units, solved);
  let side = 0;
  return combos.map(([name], s) => {
    const [load, outcome] = [loads[s] ?? missing(), outcomes[s] ?? missing()];
    if (!outcome.settled) return [name, refusal("No equilibrium once bearings lift", outcome.movement, frame.nodeIds)];
    const own = side++;
    return [name, answered(building, model.holds, (id) => insides.of(id, own), load, outcome)];
  });
}

function missing(): never {
  throw new Error("each combination has its loads and its outcome");
}

function answered(
  building: BuildingSystem,
  holds: BuildingModel["holds"],
  unit: BuildingCombination["unit"],
  load: CombinedLoads,
  outcome: SettledContact,
): BuildingCombination | FrameRefusal {
  const { frame } = building;
  const idle = unresistedLoad(outcome.prepared, load);
  if (idle !== null) return refusal("No equilibrium, a load on something free to move", idle, frame.nodeIds);
  return new Settled(building, holds, unit, outcome, load);
}

type SettledContact = Extract<ContactOutcome, { settled: true }>;

/** A solved combination; what lies between and inside the containers is worked out when it is asked for. */
class Settled implements BuildingCombination {
  private readonly building: BuildingSystem;
  private readonly holds: BuildingModel["holds"];
  readonly unit: BuildingCombination["unit"];
  private readonly outcome: SettledContact;
  private readonly load: CombinedLoads;
  private recovered: FrameSolution | undefined;

  constructor(
    building: BuildingSystem,
    holds: BuildingModel["holds"],
    unit: BuildingCombination["unit"],
    outcome: SettledContact,
    load: CombinedLoads,
  ) {
    this.building = building;
    this.holds = holds;
    this.unit = unit;
    this.outcome = outcome;
    this.load = load;
  }

  get frame(): FrameSolution {
    this.recovered ??= this.recover();
    return this.recovered;
  }

  private recover(): FrameSolution {
    const { frame, skeleton } = this.building;
    const lifted = liftedNames(this.outcome.prepared.state.lost, frame.supportBearings, frame.linkBearings);
    const held = withHolds(skeleton.links, skeleton.supports, this.holds, lifted);
    return recoverFrame(frame, { ...skeleton, ...held }, this.outcome, this.load);
  }
}
