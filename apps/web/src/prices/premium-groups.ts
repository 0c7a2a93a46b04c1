import type { Premium, Scheme } from "@cornerway/schema";

/** What the owner knows the parts of a premium by. */
export interface PremiumGroup {
  name: string;
  money: number;
  hand: "steel" | "engineer";
}

/** The money of a premium by what it is for, leaving out what costs nothing. Together they are its total. */
export function premiumGroups(premium: Premium, scheme: Scheme): PremiumGroup[] {
  const kinds = kindsOf(scheme);
  const sums = new Map<string, number>();
  for (const { elementId, item, money } of premium.lines) {
    const name = item === "engineering" ? engineer : (kinds.get(elementId) ?? "Other steel");
    sums.set(name, (sums.get(name) ?? 0) + money);
  }
  return [...sums]
    .filter(([, money]) => money !== 0)
    .map(([name, money]): PremiumGroup => ({ name, money, hand: name === engineer ? "engineer" : "steel" }))
    .toSorted((a, b) => Number(a.hand === "engineer") - Number(b.hand === "engineer") || b.money - a.money);
}

const engineer = "The engineer";

function kindsOf({ openings, posts, beams, seats, locks, ties, pads }: Scheme): ReadonlyMap<string, string> {
  const named = (elements: readonly { id: string }[], name: string) =>
    elements.map(({ id }): [string, string] => [id, name]);
  const walls = openings.filter(({ use }) => use === "open-wall");
  return new Map([
    ...named(openings, "Openings"),
    ...named(walls, "Walls taken out"),
    ...named([...posts, ...beams], "Posts and beams"),
    ...named([...seats, ...locks, ...ties], "Connections"),
    ...named(pads, "Pads beyond the plain stack"),
  ]);
}
