/**
 * Adds M·a to `sumA` and M·b to `sumB` for a matrix of `rows` rows (row-major): four rows and two vectors at a time, so that
 * each loaded number serves two or four. Every entry is summed in one order whatever stands beside it.
 */
export function addRowsTimesTwo(
  matrix: Float64Array,
  rows: number,
  a: Float64Array,
  b: Float64Array,
  sumA: Float64Array,
  sumB: Float64Array,
): void {
  const columns = a.length;
  let row = 0;
  for (; row + 3 < rows; row += 4) addFourRows(matrix, row, columns, a, b, sumA, sumB);
  for (; row < rows; row++) addRow(matrix, row, columns, a, b, sumA, sumB);
}

function addFourRows(
  matrix: Float64Array,
  row: number,
  columns: number,
  a: Float64Array,
  b: Float64Array,
  sumA: Float64Array,
  sumB: Float64Array,
): void {
  let p = row * columns;
  let q = p + columns;
  let r = q + columns;
  let s = r + columns;
  let [p0, q0, r0, s0] = [sumA[row] ?? 0, sumA[row + 1] ?? 0, sumA[row + 2] ?? 0, sumA[row + 3] ?? 0];
  let [p1, q1, r1, s1] = [sumB[row] ?? 0, sumB[row + 1] ?? 0, sumB[row + 2] ?? 0, sumB[row + 3] ?? 0];
  for (let c = 0; c < columns; c++) {
    const x = a[c] ?? 0;
    const y = b[c] ?? 0;
    const mp = matrix[p++] ?? 0;
    const mq = matrix[q++] ?? 0;
    const mr = matrix[r++] ?? 0;
    const ms = matrix[s++] ?? 0;
    p0 += mp * x;
    p1 += mp * y;
    q0 += mq * x;
    q1 += mq * y;
    r0 += mr * x;
    r1 += mr * y;
    s0 += ms * x;
    s1 += ms * y;
  }
  sumA[row] = p0;
  sumA[row + 1] = q0;
  sumA[row + 2] = r0;
  sumA[row + 3] = s0;
  sumB[row] = p1;
  sumB[row + 1] = q1;
  sumB[row + 2] = r1;
  sumB[row + 3] = s1;
}

function addRow(
  matrix: Float64Array,
  row: number,
  columns: number,
  a: Float64Array,
  b: Float64Array,
  sumA: Float64Array,
  sumB: Float64Array,
): void {
  let first = sumA[row] ?? 0;
  let second = sumB[row] ?? 0;
  for (let c = 0, at = row * columns; c < columns; c++, at++) {
    const value = matrix[at] ?? 0;
    first += value * (a[c] ?? 0);
    second += value * (b[c] ?? 0);
  }
  sumA[row] = first;
  sumB[row] = second;
}
