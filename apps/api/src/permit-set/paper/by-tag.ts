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
