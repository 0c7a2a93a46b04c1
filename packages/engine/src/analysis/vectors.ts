/** Adds so many times the values to the sum. */
export function addTimes(sum: Float64Array, values: Float64Array, factor: number): void {
  if (factor === 0) return;
  for (let f = 0; f < sum.length; f++) sum[f] = (sum[f] ?? 0) + factor * (values[f] ?? 0);
}
