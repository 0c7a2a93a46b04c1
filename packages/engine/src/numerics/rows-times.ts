/**
 * Adds M·a to `sumA` and M·b to `sumB` for a matrix of as many rows as there are sums (row-major): two vectors at a time, so
 * that each number of the matrix is loaded once for both (four rows at a time are slower, measured).
 */
export function addRowsTimesTwo(
  matrix: Float64Array,
  a: Float64Array,
  b: Float64Array,
  sumA: Float64Array,
  sumB: Float64Array,
): void {
  const columns = a.length;
  for (let row = 0, at = 0; row < sumA.length; row++) {
    let first = sumA[row] ?? 0;
    let second = sumB[row] ?? 0;
    for (let c = 0; c < columns; c++, at++) {
      const value = matrix[at] ?? 0;
      first += value * (a[c] ?? 0);
      second += value * (b[c] ?? 0);
    }
    sumA[row] = first;
    sumB[row] = second;
  }
}
