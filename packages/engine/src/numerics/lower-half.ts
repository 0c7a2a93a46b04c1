/** The lower half of a symmetric matrix with its diagonal, row after row. */
export type LowerHalf = Float64Array;

/** Of the full row-major matrix of `size` rows that begins at `from`. */
export function lowerHalf(matrix: Float64Array, from: number, size: number): LowerHalf {
  const half = new Float64Array((size * (size + 1)) / 2);
  let at = 0;
  for (let i = 0; i < size; i++) for (let j = 0, k = from + i * size; j <= i; j++) half[at++] = matrix[k++] ?? 0;
  return half;
}

/** Writes it into a full row-major matrix of `size` rows that begins at `to`; what is above the diagonal stays as it is. */
export function writeLowerHalf(half: LowerHalf, matrix: Float64Array, to: number, size: number): void {
  let at = 0;
  for (let i = 0; i < size; i++) for (let j = 0, k = to + i * size; j <= i; j++) matrix[k++] = half[at++] ?? 0;
}
