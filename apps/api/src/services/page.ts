/** One page of a list. */
export interface Page<T> {
  items: T[];
  /** What the next page comes after; null on the last. */
  next: string | null;
}

/** The page of what was read with one more than fits, which tells whether there is a next one. */
export function pageOf<T>(read: readonly T[], most: number, keyOf: (item: T) => string | number): Page<T> {
  const items = read.slice(0, most);
  const last = items.at(-1);
  return { items, next: read.length > most && last !== undefined ? String(keyOf(last)) : null };
}
