import type { ReducedColumn } from "./border.ts";
import { solveDense } from "./dense-ldlt.ts";
import type { SparseFactor } from "./sparse-factor.ts";
import { recoverInner, reduceLoads } from "./sparse-solve.ts";

/**
 * A factorised matrix K with further unknowns around it, [K W; Wᵀ T], solved through K's own factors and a small dense
 * system in the further ones (block elimination; what it leaves is T − Wᵀ·K⁻¹·W).
 */
export interface Border {
  readonly columns: readonly ReducedColumn[];
  /** 1 over each pivot of K. */
  readonly inverse: Float64Array;
  /** L and pivots of T − Wᵀ·K⁻¹·W, from `eliminateDense`. */
  readonly corner: Float64Array;
}

/** Solves in place; the further unknowns stand behind the factor's own, x[equation·count + side]. */
export function solveBordered(
  factor: SparseFactor,
  { columns, inverse, corner }: Border,
  x: Float64Array,
  count: number,
): void {
  const { equations } = factor.tree;
  reduceLoads(factor, x, count);
  const y = x.subarray(equations * count);
  columns.forEach((column, c) => subtractProducts(column, inverse, x, y, c, count));
  solveDense(corner, columns.length, y, count);
  columns.forEach((column, c) => subtractColumn(column, x, y, c, count));
  recoverInner(factor, x, count);
}

/** y[c] −= wᵀ·K⁻¹·f for every side. */
function subtractProducts(
  { firsts, starts, values }: ReducedColumn,
  inverse: Float64Array,
  x: Float64Array,
  y: Float64Array,
  c: number,
  count: number,
): void {
  for (let r = 0; r < count; r++) {
    let sum = y[c * count + r] ?? 0;
    for (let n = 0; n < firsts.length; n++) {
      const end = starts[n + 1] ?? 0;
      for (let v = starts[n] ?? 0, e = firsts[n] ?? 0; v < end; v++, e++)
        sum -= (values[v] ?? 0) * (inverse[e] ?? 0) * (x[e * count + r] ?? 0);
    }
    y[c * count + r] = sum;
  }
}

function subtractColumn(
  { firsts, starts, values }: ReducedColumn,
  x: Float64Array,
  y: Float64Array,
  c: number,
  count: number,
): void {
  for (let r = 0; r < count; r++) {
    const factor = y[c * count + r] ?? 0;
    if (factor === 0) continue;
    for (let n = 0; n < firsts.length; n++) {
      const end = starts[n + 1] ?? 0;
      for (let v = starts[n] ?? 0, at = (firsts[n] ?? 0) * count + r; v < end; v++, at += count)
        x[at] = (x[at] ?? 0) - factor * (values[v] ?? 0);
    }
  }
}
