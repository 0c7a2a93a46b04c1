/** Runs by what they govern, the fullest first, then the others in the order of the plan. */
export function governingFirst<R extends { readonly id: string }>(
  runs: readonly R[],
  results: readonly { readonly run: string; readonly utilisation: number | null }[],
): R[] {
  const place = new Map<string, number>();
  for (const { run, utilisation } of results) if (utilisation !== null && !place.has(run)) place.set(run, place.size);
  return runs.toSorted((a, b) => (place.get(a.id) ?? Infinity) - (place.get(b.id) ?? Infinity) || 0);
}
