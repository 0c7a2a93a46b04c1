/**
 * Rising places moved as little as needed so that neighbours are at least `leastPx` apart, keeping their order: bubbles
 * of close grid lines step aside and their lines jog.
 */
export function spreadApart(placesPx: readonly number[], leastPx: number): number[] {
  const groups: { sum: number; count: number; start: number }[] = [];
  for (const [index, place] of placesPx.entries()) {
    groups.push({ sum: place - index * leastPx, count: 1, start: index });
    mergeBack(groups);
  }
  return groups.flatMap(({ sum, count, start }) =>
    Array.from({ length: count }, (_, at) => sum / count + (start + at) * leastPx),
  );
}

/** Pools neighbours that would stand too close at their common mean (isotonic regression by pooling). */
function mergeBack(groups: { sum: number; count: number; start: number }[]): void {
  for (;;) {
    const last = groups.at(-1);
    const before = groups.at(-2);
    if (last === undefined || before === undefined || before.sum / before.count <= last.sum / last.count) return;
    groups.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count, start: before.start });
  }
}
