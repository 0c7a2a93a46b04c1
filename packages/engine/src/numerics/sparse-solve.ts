import { Scratch } from "./scratch.ts";
import type { Front } from "./front-tree.ts";
import type { SparseFactor } from "./sparse-factor.ts";
import { backwardFront, forwardFront } from "./solve-kernel.ts";

/** Solves in place for `count` right-hand sides stored equation by equation (x[equation·count + side]). */
export function solveInPlace(factor: SparseFactor, x: Float64Array, count: number): void {
  reduceLoads(factor, x, count);
  recoverInner(factor, x, count);
}

/**
 * Forward elimination: the eliminated part of x becomes D·Lᵀ·(inner solution with retained unknowns held), the retained
 * part becomes the loads carried over to the retained unknowns.
 */
export function reduceLoads({ tree, panels }: SparseFactor, x: Float64Array, count: number): void {
  const y = SIDES.room(largestFront(tree.fronts) * count);
  tree.fronts.forEach(({ rows, pivots }, index) => {
    if (pivots === 0) return;
    gather(rows, x, y, count);
    forwardFront(rows.length, pivots, panels[index] ?? EMPTY, y, count);
    scatter(rows, rows.length, x, y, count);
  });
}

/** Back substitution: with the retained unknowns in place, turns the result of `reduceLoads` into the inner unknowns. */
export function recoverInner({ tree, panels, diagonal }: SparseFactor, x: Float64Array, count: number): void {
  const y = SIDES.room(largestFront(tree.fronts) * count);
  for (let index = tree.fronts.length - 1; index >= 0; index--) {
    const front = tree.fronts[index];
    if (front === undefined || front.pivots === 0) continue;
    const { rows, pivots } = front;
    gather(rows, x, y, count);
    backwardFront(rows.length, pivots, panels[index] ?? EMPTY, diagonal, rows[0] ?? 0, y, count);
    scatter(rows, pivots, x, y, count);
  }
}

const EMPTY = new Float64Array(0);
const SIDES = new Scratch();

function largestFront(fronts: readonly Front[]): number {
  return fronts.reduce((most, { rows }) => Math.max(most, rows.length), 0);
}

function gather(rows: Int32Array, x: Float64Array, y: Float64Array, count: number): void {
  for (let i = 0; i < rows.length; i++) {
    const source = (rows[i] ?? 0) * count;
    for (let r = 0; r < count; r++) y[i * count + r] = x[source + r] ?? 0;
  }
}

function scatter(rows: Int32Array, to: number, x: Float64Array, y: Float64Array, count: number): void {
  for (let i = 0; i < to; i++) {
    const target = (rows[i] ?? 0) * count;
    for (let r = 0; r < count; r++) x[target + r] = y[i * count + r] ?? 0;
  }
}
