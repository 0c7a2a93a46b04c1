import { LEAST_LEFT_BY_UPDATE } from "./tolerances.ts";

/**
 * Eliminates the first `pivots` unknowns of a dense symmetric matrix (row-major, both halves given) in place and in order: L
 * below the diagonal, the pivots on it, what is left in the remaining block. False when a pivot nearly vanishes beside
 * `scale`, its own diagonal in the sums it comes from: then the matrix is not to be used. Without exchanges, which a
 * quasidefinite matrix does not need (Vanderbei, SIAM J. Optim. 5 (1995), from memory).
 */
export function eliminateDense(a: Float64Array, size: number, pivots: number, scale: Float64Array): boolean {
  for (let p = 0; p < pivots; p++) {
    if (isLost(a, size, p, scale)) return false;
    eliminateOne(a, size, p);
  }
  return true;
}

/**
 * The vector that such a matrix takes to zero, where one pivot alone vanishes beside `scale`: 1 there and nothing after it.
 * Null where none vanishes, or several. The matrix is overwritten. What stands beside a vanished pivot is taken for zero, as
 * it is in a semidefinite matrix; whoever asks checks the vector by itself.
 */
export function loneNullVector(a: Float64Array, size: number, scale: Float64Array): Float64Array | null {
  let lost = -1;
  for (let p = 0; p < size; p++) {
    if (!isLost(a, size, p, scale)) {
      eliminateOne(a, size, p);
      continue;
    }
    if (lost >= 0) return null;
    lost = p;
    for (let i = p + 1; i < size; i++) a[i * size + p] = 0;
  }
  if (lost < 0) return null;
  const z = new Float64Array(size);
  z[lost] = 1;
  for (let i = lost - 1; i >= 0; i--)
    for (let k = i + 1; k <= lost; k++) z[i] = (z[i] ?? 0) - (a[k * size + i] ?? 0) * (z[k] ?? 0);
  return z;
}

function isLost(a: Float64Array, size: number, p: number, scale: Float64Array): boolean {
  return !(Math.abs(a[p * size + p] ?? 0) > LEAST_LEFT_BY_UPDATE * (scale[p] ?? 0));
}

function eliminateOne(a: Float64Array, size: number, p: number): void {
  const pivot = a[p * size + p] ?? 0;
  for (let i = p + 1; i < size; i++) {
    const factor = (a[i * size + p] ?? 0) / pivot;
    if (factor === 0) continue;
    for (let j = p + 1; j <= i; j++) a[i * size + j] = (a[i * size + j] ?? 0) - factor * (a[j * size + p] ?? 0);
  }
  for (let i = p + 1; i < size; i++) a[i * size + p] = (a[i * size + p] ?? 0) / pivot;
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
