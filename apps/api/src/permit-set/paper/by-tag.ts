/** In the order people count: D2 before D10. */
export const byTag = <T extends { tag: string }>(elements: readonly T[]): T[] =>
  elements.toSorted((a, b) => {
    const [one, other] = [parted(a.tag), parted(b.tag)];
    if (one.letters !== other.letters) return one.letters < other.letters ? -1 : 1;
    return one.number - other.number;
  });

const parted = (tag: string): { letters: string; number: number } => ({
  letters: tag.replace(/\d+$/, ""),
  number: Number(/\d+$/.exec(tag)?.[0] ?? 0),
});

const mostListed = 12;

/** Tags in the order people count; many are told by the first of them. */
export function listed(tags: readonly string[]): string {
  const ordered = byTag(tags.map((tag) => ({ tag }))).map(({ tag }) => tag);
  const shown = ordered.slice(0, mostListed).join(", ");
  return ordered.length > mostListed ? `${shown} and ${ordered.length - mostListed} more` : shown;
}
