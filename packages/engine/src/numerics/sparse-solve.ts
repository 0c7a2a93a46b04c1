import type { Front } from "./front-tree.ts";
import type { SparseFactor } from "./sparse-factor.ts";

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
  tree.fronts.forEach((front, index) => forward(front, panels[index] ?? EMPTY, x, count));
}

/** Back substitution: with the retained unknowns in place, turns the result of `reduceLoads` into the inner unknowns. */
export function recoverInner({ tree, panels, diagonal }: SparseFactor, x: Float64Array, count: number): void {
  for (let index = tree.fronts.length - 1; index >= 0; index--) {
    const front = tree.fronts[index];
    if (front !== undefined) backward(front, panels[index] ?? EMPTY, diagonal, x, count);
  }
}

const EMPTY = new Float64Array(0);

function forward({ rows, pivots }: Front, panel: Float64Array, x: Float64Array, count: number): void {
  for (let i = 1; i < rows.length; i++) {
    const target = (rows[i] ?? 0) * count;
    const columns = i < pivots ? i : pivots;
    for (let p = 0; p < columns; p++) {
      const l = panel[i * pivots + p] ?? 0;
      if (l === 0) continue;
      const source = (rows[p] ?? 0) * count;
      for (let r = 0; r < count; r++) x[target + r] = (x[target + r] ?? 0) - l * (x[source + r] ?? 0);
    }
  }
}

function backward(
  { rows, pivots }: Front,
  panel: Float64Array,
  diagonal: Float64Array,
  x: Float64Array,
  count: number,
): void {
  for (let p = pivots - 1; p >= 0; p--) {
    const target = (rows[p] ?? 0) * count;
    const pivot = diagonal[rows[p] ?? 0] ?? 1;
    for (let r = 0; r < count; r++) x[target + r] = (x[target + r] ?? 0) / pivot;
    for (let i = p + 1; i < rows.length; i++) {
      const l = panel[i * pivots + p] ?? 0;
      if (l === 0) continue;
      const source = (rows[i] ?? 0) * count;
      for (let r = 0; r < count; r++) x[target + r] = (x[target + r] ?? 0) - l * (x[source + r] ?? 0);
    }
  }
}
