/** Adds so many times the values to the sum. */
export function addTimes(sum: Float64Array, values: Float64Array, factor: number): void {
  if (factor === 0) return;
  for (let f = 0; f < sum.length; f++) sum[f] = (sum[f] ?? 0) + factor * (values[f] ?? 0);
}

/** A number of each item; `Float64Array.from` makes them through an iterator, which costs more than the numbers (measured). */
export function numbersOf<T>(items: readonly T[], numberOf: (item: T, n: number) => number): Float64Array {
  const numbers = new Float64Array(items.length);
  items.forEach((item, n) => (numbers[n] = numberOf(item, n)));
  return numbers;
}

/** The largest size of any of the values. */
export function largest(values: Float64Array): number {
  let most = 0;
  for (let n = 0; n < values.length; n++) most = Math.max(most, Math.abs(values[n] ?? 0));
  return most;
}
