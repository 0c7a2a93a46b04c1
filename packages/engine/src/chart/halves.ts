/** Columns of a side in two halves, for two threads: centres, mm, each half in the order in which it is traced. */
export type Halves = {
  /** With the column that comes first. */
  readonly own: readonly number[];
  readonly beside: readonly number[];
};

/**
 * Those on one side of a place and those on the other, so that columns next to one another, which lead to each other, are traced
 * by one thread, and about as many free ones in each: what is forbidden takes no solution. `centres`: the first to be traced first.
 */
export function halvesOf(centres: readonly number[], isFree: (centreMm: number) => boolean): Halves {
  const [first = 0] = centres;
  const free = centres.filter(isFree).toSorted((a, b) => a - b);
  const last = free[Math.ceil(free.length / 2) - 1] ?? first;
  const isOwn = (centreMm: number): boolean => centreMm <= last === first <= last;
  return { own: centres.filter(isOwn), beside: centres.filter((centreMm) => !isOwn(centreMm)) };
}
