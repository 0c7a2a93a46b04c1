import type { HoldCandidate, HoldPlan } from "../model/plan-holds.ts";
import type { BearingForces } from "./bearing-forces.ts";
import { openingLoad } from "./bearing-state.ts";
import type { BuildingSystem } from "./building-system.ts";
import type { CombinedLoads } from "./combined-loads.ts";
import type { ContactOutcome } from "./contact.ts";
import { OpenedBearings } from "./opened-bearings.ts";
import type { Prepared } from "./prepared.ts";
import { slipsWithin } from "./slips-within.ts";
import { HOLDS_NOTHING, springsBetween, type Bearing } from "./system.ts";
import { addTimes } from "./vectors.ts";

type Settled = Extract<ContactOutcome, { settled: true }>;

/** How far each plain bearing has slipped, mm: x and y of one after the other. */
export type Slips = Float64Array;

/**
 * Plain bearings under a plan that ties: nothing but friction on both faces holds them, so what they hold is no more than that
 * of what presses on them. A bearing of which more is asked slips until it is as much; a slip moves what it joins as an opening
 * does upright, so that the structure stays the one that was factorised.
 */
export class Friction {
  private readonly coefficient: number;
  private readonly plain: readonly HoldCandidate[];
  private readonly directions: readonly Bearing[];
  private readonly bearingOf: readonly (number | undefined)[];
  private readonly forces: BearingForces;
  private readonly opened = new WeakMap<Prepared, OpenedBearings>();

  private constructor(building: BuildingSystem, forces: BearingForces, plan: HoldPlan, coefficient: number) {
    const { frame, skeleton } = building;
    this.forces = forces;
    this.coefficient = coefficient;
    this.plain = plan.candidates.filter(isPlain);
    const linkOf = new Map(skeleton.links.map((link) => [link.id, link]));
    this.bearingOf = this.plain.map(
      ({ bearing }) => frame.linkBearings.get(bearing) ?? frame.supportBearings.get(bearing),
    );
    this.directions = this.plain.flatMap(({ bearing }): Bearing[] => {
      const link = linkOf.get(bearing);
      const node = frame.nodeOf.get(link?.j ?? bearing) ?? NaN;
      const k = plan.stiffness;
      if (link !== undefined)
        return springsBetween(frame.nodeOf.get(link.i) ?? NaN, node, [k, k, 0, 0, 0, 0]).map((spring): Bearing => ({
          kind: "link",
          ...spring,
          holds: HOLDS_NOTHING,
        }));
      return [node * 6, node * 6 + 1].map((freedom): Bearing => ({ kind: "support", freedom, holds: HOLDS_NOTHING }));
    });
  }

  /** Undefined where no bearing is held by friction alone, or what it holds is not limited. */
  static of(building: BuildingSystem, forces: BearingForces, plan: HoldPlan | undefined): Friction | undefined {
    if (plan?.kind !== "tied" || plan.friction === undefined || !plan.candidates.some(isPlain)) return undefined;
    return new Friction(building, forces, plan, plan.friction);
  }

  /** Whether every plain bearing that is not in `held` holds no more than friction, in a run without slips. */
  isEnough(bearing: (name: string) => readonly [number, number, number], held: ReadonlySet<string>): boolean {
    return this.plain.every(({ bearing: name }) => {
      if (held.has(name)) return true;
      const [x, y, up] = bearing(name);
      return Math.sqrt(x * x + y * y) <= this.mostWith(up);
    });
  }

  /**
   * The slips under which these bearings would hold no more than friction, from a run solved with other slips: the same slips
   * where they already do, null where friction cannot hold what stands on them.
   */
  slipsFrom(outcome: Settled, load: CombinedLoads, slips: Slips, held: ReadonlySet<string>): Slips | null {
    const { prepared } = outcome;
    const all = this.forces.under(outcome, load);
    const acting = this.plain.flatMap(({ bearing }, n) => (held.has(bearing) || this.isLifted(prepared, n) ? [] : [n]));
    const members = acting.flatMap((n) => [2 * n, 2 * n + 1]);
    const next: Slips = new Float64Array(slips.length);
    for (const m of members) next[m] = slips[m] ?? 0;
    const part = (n: number, c: number): number =>
      all[(this.forces.at.get(this.plain[n]?.bearing ?? "") ?? NaN) + c] ?? 0;
    const forceAt = (m: number): number => part(m >> 1, m & 1);
    const upAt = (n: number): number => part(n, 2);
    const isWithin = acting.every((n) => {
      const [x, y] = [forceAt(2 * n), forceAt(2 * n + 1)];
      return Math.sqrt(x * x + y * y) <= this.mostWith(upAt(n));
    });
    if (isWithin && next.every((slip, m) => slip === slips[m])) return slips;
    const found = slipsWithin({
      stiffness: this.openedIn(prepared).among(members).flexibility,
      forces: Float64Array.from(members, forceAt),
      slips: Float64Array.from(members, (m) => next[m] ?? 0),
      most: Float64Array.from(acting, (n) => this.coefficient * Math.max(upAt(n), 0)),
    });
    if (found === null) return null;
    members.forEach((m, i) => (next[m] = found[i] ?? 0));
    return next;
  }

  /** The load with these slips. */
  slipped(load: CombinedLoads, slips: Slips): CombinedLoads {
    const added = openingLoad(this.directions, slips, load.forces.length);
    const [forces, settlement] = [load.forces.slice(), load.settlement.slice()];
    addTimes(forces, added.forces, 1);
    addTimes(settlement, added.settlement, 1);
    const byBearing = this.plain.map(({ bearing }, n): [string, readonly [number, number]] => [
      bearing,
      [slips[2 * n] ?? 0, slips[2 * n + 1] ?? 0],
    ]);
    return {
      forces,
      settlement,
      onMembers: load.onMembers,
      unresisted: load.unresisted,
      slips: new Map(byBearing.filter(([, [x, y]]) => x !== 0 || y !== 0)),
      get actions() {
        return load.actions;
      },
    };
  }

  noSlips(): Slips {
    return new Float64Array(this.directions.length);
  }

  private isLifted({ state: { open, lost } }: Prepared, n: number): boolean {
    const b = this.bearingOf[n] ?? NaN;
    return open[b] === 1 || lost[b] === 1;
  }

  private mostWith(upN: number): number {
    return this.coefficient * Math.max(upN, 0) * (1 + NEAR) + NEAR_N;
  }

  private openedIn(prepared: Prepared): OpenedBearings {
    const known = this.opened.get(prepared) ?? new OpenedBearings(prepared, this.directions);
    this.opened.set(prepared, known);
    return known;
  }
}

/** So much more than friction still counts as friction, as a share of it and besides: twice what `slipsWithin` leaves. Chosen. */
const NEAR = 0.02;
const NEAR_N = 20;

/** What goes along with what it bears (`of` null) is not held here, and ground that gives holds with play instead. */
const isPlain = ({ plain, of, atPlay }: HoldCandidate): boolean => plain === true && of !== null && atPlay !== true;
