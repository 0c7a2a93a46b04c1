/** Who hands load to whom: from the one above to the one below, by id. */
export type Handing = { readonly from: string; readonly to: string };

/**
 * The ids in an order in which each comes after everything that loads it (Kahn). Ids on a loop, which no built
 * structure has, come last in their given order.
 */
export function loadingOrder(ids: readonly string[], handings: readonly Handing[]): string[] {
  const waiting = new Map(ids.map((id) => [id, 0]));
  const below = new Map<string, string[]>();
  for (const { from, to } of handings) {
    const count = waiting.get(to);
    if (count === undefined || from === to) continue;
    waiting.set(to, count + 1);
    const list = below.get(from);
    if (list === undefined) below.set(from, [to]);
    else list.push(to);
  }
  const ordered = ids.filter((id) => waiting.get(id) === 0);
  for (const id of ordered)
    for (const next of below.get(id) ?? []) {
      const left = (waiting.get(next) ?? 0) - 1;
      waiting.set(next, left);
      if (left === 0) ordered.push(next);
    }
  if (ordered.length === ids.length) return ordered;
  const done = new Set(ordered);
  return [...ordered, ...ids.filter((id) => !done.has(id))];
}
