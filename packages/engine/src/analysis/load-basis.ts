import type { ModelCase } from "../model/analytical-model.ts";
import { roundingBound } from "../numerics/tolerances.ts";

/** The load cases of a container as sums of a few loads: dozens of wind cases press on the same few faces. */
export interface LoadBasis {
  /** Loads at right angles to one another, of which every case is a sum; each a vector of all that `slots` names. */
  readonly loads: readonly Float64Array[];
  readonly slots: LoadSlots;
  /** How much of each is in a case. */
  readonly shares: ReadonlyMap<string, Float64Array>;
}

/** How much of each load of the basis a combination of cases takes. */
export function sharesUnder({ loads, shares }: LoadBasis, combo: Readonly<Record<string, number>>): Float64Array {
  const sum = new Float64Array(loads.length);
  for (const [name, factor] of Object.entries(combo)) {
    const own = shares.get(name);
    if (own !== undefined) for (let k = 0; k < sum.length; k++) sum[k] = (sum[k] ?? 0) + factor * (own[k] ?? 0);
  }
  return sum;
}

/**
 * Gram–Schmidt on the cases, each as a vector of all that loads lines and nodes; the one of which most is left comes next. It
 * ends where no more than rounding is left of any.
 */
export function loadBasis(cases: Readonly<Record<string, ModelCase>>): LoadBasis {
  const slots = slotsOf(Object.values(cases));
  const left = Object.entries(cases).map(([name, loads]): Left => {
    const vector = vectorOf(loads, slots);
    return { name, vector, size: sizeOf(vector), shares: [] };
  });
  const basis: Float64Array[] = [];
  for (let next = mostLeft(left); next !== undefined; next = mostLeft(left)) {
    const direction = atRightAngles(next.vector, basis);
    basis.push(direction);
    for (const one of left) one.shares.push(one.size === 0 ? 0 : takeOut(one.vector, direction));
  }
  return {
    loads: basis,
    slots,
    shares: new Map(left.map(({ name, shares }) => [name, Float64Array.from(shares)])),
  };
}

/** Where the three components of each loaded line, N/mm, and the six of each loaded node, N and N at `ARM_MM`, stand in a load. */
export interface LoadSlots {
  readonly lines: ReadonlyMap<string, number>;
  readonly nodes: ReadonlyMap<string, number>;
  readonly length: number;
}

/** Moments count as forces at this arm, mm. */
export const ARM_MM = 1000;

/** Whether a load has anything on what stands from this slot on. */
export function isLoaded(load: Float64Array, from: number, count: number): boolean {
  for (let n = from; n < from + count; n++) if (load[n] !== 0) return true;
  return false;
}

/** A case and what is left of it beside its shares. */
type Left = {
  readonly name: string;
  readonly vector: Float64Array;
  readonly size: number;
  readonly shares: number[];
};

/** Roundings behind one case: thousands of products. */
const ROUNDING = roundingBound(4096);
function slotsOf(cases: readonly ModelCase[]): LoadSlots {
  const [lines, nodes] = [new Map<string, number>(), new Map<string, number>()];
  let length = 0;
  for (const { beam_udl = [], nodal = [] } of cases) {
    for (const { beam } of beam_udl) length += newSlots(lines, beam, length, 3);
    for (const { node } of nodal) length += newSlots(nodes, node, length, 6);
  }
  return { lines, nodes, length };
}

/** How many slots a name takes: none if it has them. */
function newSlots(of: Map<string, number>, name: string, at: number, count: number): number {
  if (of.has(name)) return 0;
  of.set(name, at);
  return count;
}

function vectorOf({ beam_udl = [], nodal = [] }: ModelCase, { lines, nodes, length }: LoadSlots): Float64Array {
  const vector = new Float64Array(length);
  const add = (at: number | undefined, values: readonly number[]): void => {
    values.forEach((value, c) => {
      const slot = (at ?? NaN) + c;
      vector[slot] = (vector[slot] ?? 0) + (c < 3 ? value : value / ARM_MM);
    });
  };
  for (const { beam, q } of beam_udl) add(lines.get(beam), q);
  for (const { node, F } of nodal) add(nodes.get(node), F);
  return vector;
}

function mostLeft(all: readonly Left[]): Left | undefined {
  let most: Left | undefined;
  let share = ROUNDING;
  for (const one of all) {
    const left = one.size === 0 ? 0 : sizeOf(one.vector) / one.size;
    if (left > share) [most, share] = [one, left];
  }
  return most;
}

/** Of size 1; taken out twice for full accuracy (Kahan and Parlett: "twice is enough", from memory). */
function atRightAngles(vector: Float64Array, basis: readonly Float64Array[]): Float64Array {
  const direction = vector.slice();
  for (const other of basis) takeOut(direction, other);
  const size = sizeOf(direction);
  for (let n = 0; n < direction.length; n++) direction[n] = (direction[n] ?? 0) / size;
  return direction;
}

/** Takes what goes along a direction of size 1 out of a vector; returns how much that was. */
function takeOut(vector: Float64Array, direction: Float64Array): number {
  let along = 0;
  for (let n = 0; n < vector.length; n++) along += (vector[n] ?? 0) * (direction[n] ?? 0);
  if (along !== 0) for (let n = 0; n < vector.length; n++) vector[n] = (vector[n] ?? 0) - along * (direction[n] ?? 0);
  return along;
}

function sizeOf(vector: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < vector.length; n++) sum += (vector[n] ?? 0) * (vector[n] ?? 0);
  return Math.sqrt(sum);
}
