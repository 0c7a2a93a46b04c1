import { BearingForces } from "../analysis/bearing-forces.ts";
import { bearingForce, bearingGap } from "../analysis/bearing-state.ts";
import type { BuildingCombination } from "../analysis/building-combination.ts";
import { buildingLoads } from "../analysis/building-loads.ts";
import { buildingSystem, type BuildingSystem, type CondensedUnit } from "../analysis/building-system.ts";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { Friction } from "../analysis/friction.ts";
import { ownMovement } from "../analysis/own-movement.ts";
import type { LoadVector, Movement } from "../analysis/solve-movement.ts";
import type { ContactState, System } from "../analysis/system.ts";
import { turnStiffness } from "../analysis/turn-stiffness.ts";
import { unresistedLoad } from "../analysis/unresisted-load.ts";
import { addTimes } from "../analysis/vectors.ts";
import { nodeName, type BuildingModel, type PlacedUnit } from "../model/building-model.ts";
import { sameNumbers } from "../numerics/same-graph.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import { RestInState } from "./rest-in-state.ts";

/** What is told of a building solved with one container changed. N, mm, radians, global axes but for `retainedIn`. */
export type TriedCombination = Pick<
  BuildingCombination,
  "movement" | "nodeIds" | "retainedIn" | "bearing" | "residual" | "state"
>;

type Combo = Readonly<Record<string, number>>;

/**
 * What stands round one container of a building and stays as it is while the container changes. It is condensed to the
 * container's bearing points once for each state of the bearings; the container is then joined to it, and whether all bearings
 * stay as the state has them is looked at afterwards.
 */
export class RestOfBuilding {
  private readonly building: BuildingSystem;
  private readonly own: CondensedUnit;
  private readonly system: System;
  private readonly cache: CondensationCache;
  private readonly forces: BearingForces;
  private readonly friction: Friction | undefined;
  private readonly cases = new Map<string, LoadVector>();
  private readonly states = new Map<string, RestInState | undefined>();

  private constructor(model: BuildingModel, building: BuildingSystem, own: CondensedUnit, cache: CondensationCache) {
    const { frame, skeleton, units } = building;
    const first = frame.system.elements.length - units.length;
    const elements = frame.system.elements.filter((_, n) => n !== first + units.indexOf(own));
    this.building = building;
    this.own = own;
    this.cache = cache;
    this.system = { ...frame.system, elements };
    this.forces = new BearingForces(frame, skeleton, model.holds);
    this.friction = Friction.of(building, this.forces, model.holds);
  }

  /** Undefined where something inside a container moves. */
  static of(model: BuildingModel, unitId: string, cache: CondensationCache): RestOfBuilding | undefined {
    const assembly = buildingSystem(model, cache);
    const own = assembly.stable ? assembly.building.unitById.get(unitId) : undefined;
    return assembly.stable && own !== undefined ? new RestOfBuilding(model, assembly.building, own, cache) : undefined;
  }

  /** The container as it takes the place of the one that was there; undefined where it bears on other points. */
  joined(unit: PlacedUnit): CondensedUnit | undefined {
    const { own, building, cache } = this;
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) return undefined;
    const { condensed } = condensation;
    const points = condensed.retained.map((n) => nodeName(unit.id, unit.fragment.nodes[n]?.id ?? ""));
    const known = building.frame.nodeIds.slice(own.firstNode, own.firstNode + own.condensed.retained.length);
    if (points.length !== known.length || points.some((name, n) => name !== known[n])) return undefined;
    if (!sameNumbers(condensed.freedoms, own.condensed.freedoms)) return undefined;
    return { ...own, unit, condensed, loads: cache.loadsOn(unit, condensed) };
  }

  /**
   * Combinations on the building with this container, in this state of the bearings; undefined for those in which a bearing
   * that is not in `held` pulls though closed, overlaps though open or holds more than friction, or a load meets no resistance.
   */
  solve(
    unit: CondensedUnit,
    combos: readonly Combo[],
    state: ContactState,
    held: ReadonlySet<string>,
  ): (TriedCombination | undefined)[] {
    const rest = this.inState(state);
    const loads = combos.map((combo) => this.loadsOn(unit, combo));
    const solved = rest?.solve(turnStiffness(unit.condensed.stiffness, unit.turn), loads);
    if (rest === undefined || solved === undefined) return combos.map(() => undefined);
    const flags = this.flagged(held);
    return solved.map((result, s) => {
      const load = loads[s];
      const stands = load !== undefined && this.stands(state, flags, result, load);
      if (!stands || unresistedLoad(rest, load) !== null) return undefined;
      const solution = this.combination(rest, unit, result, load);
      return (this.friction?.isEnough(solution.bearing, held) ?? true) ? solution : undefined;
    });
  }

  private inState(state: ContactState): RestInState | undefined {
    const key = stateKey(state);
    if (!this.states.has(key)) {
      const { firstNode, condensed } = this.own;
      const freedoms = condensed.freedoms.map((freedom) => firstNode * 6 + freedom);
      this.states.set(key, RestInState.of(this.system, freedoms, state));
    }
    return this.states.get(key);
  }

  private loadsOn(unit: CondensedUnit, combo: Combo): LoadVector {
    const { building } = this;
    const own = buildingLoads({ ...building, skeleton: { ...building.skeleton, cases: {} }, units: [unit] }, combo);
    const forces = own.forces;
    const settlement = new Float64Array(forces.length);
    for (const [name, factor] of Object.entries(combo)) {
      const rest = this.caseOn(name);
      addTimes(forces, rest.forces, factor);
      addTimes(settlement, rest.settlement, factor);
    }
    return { forces, settlement };
  }

  /** A case on all but the container. */
  private caseOn(name: string): LoadVector {
    const { building, own, cases } = this;
    const others = building.units.filter((unit) => unit !== own);
    const known = cases.get(name) ?? buildingLoads({ ...building, units: others }, { [name]: 1 });
    cases.set(name, known);
    return known;
  }

  private flagged(held: ReadonlySet<string>): Uint8Array {
    const { frame } = this.building;
    const flags = new Uint8Array(frame.system.bearings.length);
    for (const [name, b] of [...frame.linkBearings, ...frame.supportBearings]) if (held.has(name)) flags[b] = 1;
    return flags;
  }

  /** Closed bearings push, or are held; open ones stand clear. */
  private stands({ open }: ContactState, held: Uint8Array, result: Movement, load: LoadVector): boolean {
    const { bearings } = this.system;
    const pressures = bearings.map((bearing, b) => (open[b] ? 0 : bearingForce(bearing, result, load)));
    const least = -SOLUTION_ACCURACY * Math.max(0, ...pressures.map((value) => Math.abs(value)));
    const overlap = -SOLUTION_ACCURACY * largest(result.movement);
    return bearings.every((bearing, b) =>
      open[b] ? bearingGap(bearing, result, load) >= overlap : held[b] === 1 || (pressures[b] ?? 0) >= least,
    );
  }

  private combination(rest: RestInState, unit: CondensedUnit, result: Movement, load: LoadVector): TriedCombination {
    const { forces, building } = this;
    let all: Float64Array | undefined;
    return {
      movement: result.movement,
      nodeIds: building.frame.nodeIds,
      state: rest.state,
      residual: leftOver(rest, result, load),
      retainedIn: (unitId) => {
        const asked = unitId === unit.unit.id ? unit : building.unitById.get(unitId);
        if (asked === undefined) throw new RangeError(`the model has no container ${unitId}`);
        return ownMovement(asked, result.movement);
      },
      bearing: (name) => {
        all ??= forces.under({ prepared: rest, result }, load);
        const at = forces.at.get(name) ?? NaN;
        return [all[at] ?? 0, all[at + 1] ?? 0, all[at + 2] ?? 0];
      },
    };
  }
}

export const stateKey = ({ open, lost }: ContactState): string => `${open.join("")} ${lost.join("")}`;

const largest = (values: Float64Array): number => values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** Largest unbalanced force over the largest load. */
function leftOver({ held, equationOf }: RestInState, { answered }: Movement, { forces }: LoadVector): number {
  let left = 0;
  for (let f = 0; f < held.length; f++)
    if (!held[f] && (equationOf[f] ?? -1) >= 0) left = Math.max(left, Math.abs((forces[f] ?? 0) - (answered[f] ?? 0)));
  const most = largest(forces);
  return most > 0 ? left / most : left;
}
