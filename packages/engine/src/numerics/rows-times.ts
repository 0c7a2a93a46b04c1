/** Vectors that `addRowsTimes` multiplies at a time. */
export const VECTORS_AT_ONCE = 4;

/**
 * Adds M·v to the sum of each of four vectors v for a matrix of as many rows as there are sums (row-major). The vectors stand
 * number by number, vectors[column·4 + vector]. Two rows at a time, so that each loaded number serves two or four products
 * (measured: half the time of two vectors at a time); each sum has the bits it has by itself.
 */
export function addRowsTimes(matrix: Float64Array, vectors: Float64Array, sums: FourSums): void {
  const [a, b, c, d] = sums;
  const columns = vectors.length / VECTORS_AT_ONCE;
  let row = 0;
  for (; row + 1 < a.length; row += 2) addTwoRows(matrix, row, columns, vectors, a, b, c, d);
  if (row < a.length) sums.forEach((sum, v) => addRow(matrix, row, columns, vectors, v, sum));
}

export type FourSums = readonly [Float64Array, Float64Array, Float64Array, Float64Array];

function addTwoRows(
  matrix: Float64Array,
  row: number,
  columns: number,
  vectors: Float64Array,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
  d: Float64Array,
): void {
  const p = row * columns;
  const q = p + columns;
  let a0 = a[row] ?? 0;
  let a1 = a[row + 1] ?? 0;
  let b0 = b[row] ?? 0;
  let b1 = b[row + 1] ?? 0;
  let c0 = c[row] ?? 0;
  let c1 = c[row + 1] ?? 0;
  let d0 = d[row] ?? 0;
  let d1 = d[row + 1] ?? 0;
  for (let n = 0, at = 0; n < columns; n++, at += VECTORS_AT_ONCE) {
    const first = matrix[p + n] ?? 0;
    const second = matrix[q + n] ?? 0;
    const va = vectors[at] ?? 0;
    const vb = vectors[at + 1] ?? 0;
    const vc = vectors[at + 2] ?? 0;
    const vd = vectors[at + 3] ?? 0;
    a0 += first * va;
    b0 += first * vb;
    c0 += first * vc;
    d0 += first * vd;
    a1 += second * va;
    b1 += second * vb;
    c1 += second * vc;
    d1 += second * vd;
  }
  a[row] = a0;
  a[row + 1] = a1;
  b[row] = b0;
  b[row + 1] = b1;
  c[row] = c0;
  c[row + 1] = c1;
  d[row] = d0;
  d[row + 1] = d1;
}

function addRow(
  matrix: Float64Array,
  row: number,
  columns: number,
  vectors: Float64Array,
  vector: number,
  sum: Float64Array,
): void {
  let own = sum[row] ?? 0;
  for (let n = 0; n < columns; n++)
    own += (matrix[row * columns + n] ?? 0) * (vectors[n * VECTORS_AT_ONCE + vector] ?? 0);
  sum[row] = own;
}
