import { standsApart, type Premium } from "@cornerway/schema";

/** What the total does not hold, in a sentence; undefined where it holds all. */
export function apartWords(premium: Premium): string | undefined {
  if (!standsApart(premium)) return undefined;
  const count = premium.marks.filter(({ money }) => money === null).length + premium.notPriced.length;
  return count === 1
    ? "One place stands apart without a price: what it needs is not known. The total does not hold it."
    : `${count} places stand apart without a price: what they need is not known. The total does not hold them.`;
}

/** Said where a revision is priced before it is checked. */
export const notAssessedWords = "It is not checked yet: what it leaves open is not known, and no mark is counted in.";

/** How many places are priced as drawn though nobody has checked them. */
export function uncheckedWords({ marks }: Premium): string | undefined {
  const count = marks.filter(({ verdict }) => verdict === "not checked").length;
  if (count === 0) return undefined;
  return count === 1
    ? "One place is priced as drawn and not checked: it may need more."
    : `${count} places are priced as drawn and not checked: they may need more.`;
}
