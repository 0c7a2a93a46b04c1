import { BearingForces } from "./analysis/bearing-forces.ts";
import { bearingStates, type BearingStates } from "./analysis/bearing-states.ts";
import type { BuildingAnswer } from "./analysis/building-combination.ts";
import { buildingLoads } from "./analysis/building-loads.ts";
import { buildingSystem, type BuildingSystem } from "./analysis/building-system.ts";
import { ClosedCases } from "./analysis/closed-cases.ts";
import { CondensationCache } from "./analysis/condensation-cache.ts";
import type { CombinedLoads } from "./analysis/combined-loads.ts";
import { settleContact, type ContactOutcome } from "./analysis/contact.ts";
import { drivenMovement } from "./analysis/driven-movement.ts";
import { Friction } from "./analysis/friction.ts";
import { settledWithFriction } from "./analysis/settled-with-friction.ts";
import { Insides } from "./analysis/insides.ts";
import { prepare } from "./analysis/prepare.ts";
import type { Prepared } from "./analysis/prepared.ts";
import type { UnitSolution } from "./analysis/recover-unit.ts";
import { refusal } from "./analysis/refusal.ts";
import { SettledCombination } from "./analysis/settled-combination.ts";
import { allClosed } from "./analysis/system.ts";
import { unresistedLoad } from "./analysis/unresisted-load.ts";
import type { Movement } from "./analysis/solve-movement.ts";
import type { BuildingModel } from "./model/building-model.ts";

export type { BuildingAnswer, BuildingCombination } from "./analysis/building-combination.ts";

export interface BuildingResult {
  readonly combos: Readonly<Record<string, BuildingAnswer>>;
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
  return { combos: Object.fromEntries(buildingSolver(model, cache)(model.combos)) };
}

/**
 * Solves combinations of one building, as often as asked: what is closed is factorised once, each case solved for once, and
 * states of the bearings stay at hand. Links and supports named in `held` hold what lifts, as if connections were there.
 */
export type BuildingSolver = (
  combos: BuildingModel["combos"],
  held?: ReadonlySet<string>,
) => Map<string, BuildingAnswer>;

export function buildingSolver(model: BuildingModel, cache: CondensationCache): BuildingSolver {
  const assembly = buildingSystem(model, cache);
  if (!assembly.stable) {
    const [movement = null] = assembly.movements;
    const refused = refusal("No equilibrium, a mechanism inside a container", movement, assembly.nodeIds);
    return (combos) => new Map(Object.keys(combos).map((name) => [name, refused]));
  }
  const { building } = assembly;
  const { frame } = building;
  const closed = prepare(frame.system, allClosed(frame.system), cache.building, cache.between);
  if (!closed.stable)
    return (combos) =>
      new Map(
        Object.entries(combos).map(([name, combo]) => {
          const movement = drivenMovement(closed.movements, buildingLoads(building, combo));
          return [name, refusal("No equilibrium, a mechanism", movement, frame.nodeIds)];
        }),
      );
  const states = bearingStates(frame.system, cache.building.branch());
  const cases = new ClosedCases(building, closed.prepared);
  const forces = new BearingForces(frame, building.skeleton, model.holds);
  const friction = Friction.of(building, forces, model.holds);
  const standing = { building, closed: closed.prepared, states, cases, forces, friction, model };
  return (combos, held = new Set()) => solveCombinations(combos, held, standing);
}

type Standing = {
  readonly building: BuildingSystem;
  readonly closed: Prepared;
  readonly states: BearingStates;
  readonly cases: ClosedCases;
  readonly forces: BearingForces;
  readonly friction: Friction | undefined;
  readonly model: BuildingModel;
};

function solveCombinations(
  named: BuildingModel["combos"],
  held: ReadonlySet<string>,
  { building, closed, states, cases, forces, friction, model }: Standing,
): Map<string, BuildingAnswer> {
  const { frame } = building;
  const [names, combos] = [Object.keys(named), Object.values(named)];
  const given = combos.map((combo) => cases.loadsOf(combo));
  const bases = cases.movementsUnder(combos, given);
  const settle = (on: readonly CombinedLoads[], from: readonly Movement[]): ContactOutcome[] =>
    settleContact(frame.system, closed, on, from, states, flagged(building, held));
  const first = settle(given, bases);
  const { outcomes, loads } =
    friction === undefined
      ? { outcomes: first, loads: given }
      : settledWithFriction({ friction, closed, given, bases, first, held, settle });
  const solved = outcomes.flatMap((outcome, s) =>
    outcome.settled ? [{ combo: combos[s] ?? {}, movement: outcome.result.movement }] : [],
  );
  const insides = new Insides(building.unitById, solved);
  let side = 0;
  return new Map(
    names.map((name, s): [string, BuildingAnswer] => {
      const [load, outcome] = [loads[s] ?? missing(), outcomes[s] ?? missing()];
      if (!outcome.settled)
        return [name, refusal("No equilibrium once bearings lift", outcome.movement, frame.nodeIds)];
      const own = side++;
      const idle = unresistedLoad(outcome.prepared, load);
      if (idle !== null)
        return [name, refusal("No equilibrium, a load on something free to move", idle, frame.nodeIds)];
      const inside = (id: string): UnitSolution => insides.of(id, own);
      return [name, new SettledCombination({ building, holds: model.holds, forces, outcome, load }, inside)];
    }),
  );
}

/** 1 for each bearing that is to hold. */
function flagged({ frame }: BuildingSystem, held: ReadonlySet<string>): Uint8Array {
  const flags = new Uint8Array(frame.system.bearings.length);
  for (const [name, b] of [...frame.linkBearings, ...frame.supportBearings]) if (held.has(name)) flags[b] = 1;
  return flags;
}

function missing(): never {
  throw new Error("each combination has its loads and its outcome");
}
