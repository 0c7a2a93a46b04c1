import { LEAST_LEFT_BY_UPDATE } from "./tolerances.ts";

/**
 * Eliminates the first `pivots` unknowns of a dense symmetric matrix (row-major, both halves given) in place and in order: L
 * below the diagonal, the pivots on it, what is left in the remaining block. False when a pivot nearly vanishes beside
 * `scale`, its own diagonal in the sums it comes from: then the matrix is not to be used. Without exchanges, which a
 * quasidefinite matrix does not need (Vanderbei, SIAM J. Optim. 5 (1995), from memory).
 */
export function eliminateDense(a: Float64Array, size: number, pivots: number, scale: Float64Array): boolean {
  for (let p = 0; p < pivots; p++) {
    const pivot = a[p * size + p] ?? 0;
    if (!(Math.abs(pivot) > LEAST_LEFT_BY_UPDATE * (scale[p] ?? 0))) return false;
    for (let i = p + 1; i < size; i++) {
      const factor = (a[i * size + p] ?? 0) / pivot;
      if (factor === 0) continue;
      for (let j = p + 1; j <= i; j++) a[i * size + j] = (a[i * size + j] ?? 0) - factor * (a[j * size + p] ?? 0);
    }
    for (let i = p + 1; i < size; i++) a[i * size + p] = (a[i * size + p] ?? 0) / pivot;
  }
  return true;
}

/** Solves in place for `count` right-hand sides, y[row·count + side], with every unknown eliminated. */
export function solveDense(a: Float64Array, size: number, y: Float64Array, count: number): void {
  for (let i = 0; i < size; i++) subtractRows(a, size, y, count, i, 0, i, false);
  for (let i = 0; i < size; i++) {
    const pivot = a[i * size + i] ?? 1;
    for (let r = 0; r < count; r++) y[i * count + r] = (y[i * count + r] ?? 0) / pivot;
  }
  for (let i = size - 1; i >= 0; i--) subtractRows(a, size, y, count, i, i + 1, size, true);
}

function subtractRows(
  a: Float64Array,
  size: number,
  y: Float64Array,
  count: number,
  i: number,
  from: number,
  to: number,
  transposed: boolean,
): void {
  for (let p = from; p < to; p++) {
    const factor = a[transposed ? p * size + i : i * size + p] ?? 0;
    if (factor === 0) continue;
    for (let r = 0; r < count; r++) y[i * count + r] = (y[i * count + r] ?? 0) - factor * (y[p * count + r] ?? 0);
  }
}
