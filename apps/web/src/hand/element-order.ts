import type { Scheme } from "@cornerway/schema";

/**
 * Every element by id in the order one reads a building: each unit with what is cut in it, what it sits on and is locked
 * by and carries, then ties, beams, posts and pads.
 */
export function elementOrder(scheme: Scheme): string[] {
  const byTag = <T extends { tag: string }>(elements: readonly T[]): T[] =>
    elements.toSorted((a, b) => a.tag.localeCompare(b.tag, "en", { numeric: true }));
  const units = byTag(scheme.containers).flatMap(({ id }) => [
    id,
    ...[scheme.openings, scheme.locks, scheme.freeLoads]
      .flatMap((list) => byTag<{ id: string; tag: string; containerId: string }>(list))
      .filter(({ containerId }) => containerId === id)
      .map((part) => part.id),
    ...byTag(scheme.seats.filter(({ upperId }) => upperId === id)).map((seat) => seat.id),
  ]);
  const others = [scheme.ties, scheme.beams, scheme.posts, scheme.pads].flatMap((list) =>
    byTag<{ id: string; tag: string }>(list),
  );
  return [...units, ...others.map(({ id }) => id)];
}

/** The element after (1) or before (−1) the chosen one, round and round; null on an empty sheet. */
export function nextElement(scheme: Scheme, chosenId: string | null, by: 1 | -1): string | null {
  const order = elementOrder(scheme);
  if (order.length === 0) return null;
  const at = chosenId === null ? -1 : order.indexOf(chosenId);
  if (at === -1) return (by === 1 ? order[0] : order.at(-1)) ?? null;
  return order[(at + by + order.length) % order.length] ?? null;
}
