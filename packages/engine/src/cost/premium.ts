import type { CostBook, LabourName, Premium, PremiumLine, RateName, Scheme } from "@cornerway/schema";
import { inOrder } from "../geometry/in-order.ts";
import { takeOff, type TakeOff } from "./take-off.ts";

/**
 * What a scheme costs in structure above the same containers stacked plainly: quantities of its drawn elements times the
 * book's rates. Money in the book's currency, not rounded.
 */
export function premium(given: Scheme, book: CostBook): Premium {
  const scheme = inOrder(given);
  const kinds = kindsOf(scheme);
  const { lines: quantities, notKnown } = takeOff(scheme);
  const lines = quantities.map((line): PremiumLine => ({ ...line, money: moneyOf(line, kinds, book) }));
  return {
    currency: book.currency,
    lines,
    total: lines.reduce((sum, { money }) => sum + money, 0),
    forShow: [...Object.values(book.rates), ...Object.values(book.labour)].some(({ source }) => source === null),
    notPriced: notKnown.map(({ elementId }) => elementId),
  };
}

type Engineered = Extract<LabourName, `engineering, ${string}`>;

/** What an engineer's time goes to, by element. */
function kindsOf({ openings, posts, beams, seats, locks, ties }: Scheme): ReadonlyMap<string, Engineered> {
  const named = (elements: readonly { id: string }[], kind: Engineered) =>
    elements.map(({ id }): [string, Engineered] => [id, kind]);
  return new Map([
    ...named(openings, "engineering, opening"),
    ...named(posts, "engineering, post"),
    ...named(beams, "engineering, beam"),
    ...named([...seats, ...locks], "engineering, seat or made connection"),
    ...named(ties, "engineering, tie"),
  ]);
}

function moneyOf(line: TakeOff, kinds: ReadonlyMap<string, Engineered>, { rates, labour }: CostBook): number {
  const { quantity, where } = line;
  const rate = (name: RateName) => rates[name].amount;
  const hours = (name: LabourName) => labour[name].amount;
  const hand = rate(where === "shop" ? "shop hour" : "site hour");
  switch (line.item) {
    case "cut":
      return quantity * hours("cut, per m") * hand;
    case "paint repair":
      return quantity * hours("paint repair, per m of cut") * hand;
    case "weld of 5 mm":
      return quantity * hours("weld of 5 mm, per m") * hand;
    case "steel":
      return quantity * rate("steel, kg in place");
    case "lock":
      return quantity * (rate("lock, each") + hours("set a lock") * hand);
    case "anchor":
      return quantity * (rate("anchor, each") + hours("set an anchor") * hand);
    case "pad":
      return quantity * rate("pad, each");
    case "crane lift":
      return quantity * hours("lift a part, crane") * rate("crane hour");
    case "engineering":
      return quantity * hours(engineered(kinds, line.elementId)) * rate("engineering hour");
  }
}

function engineered(kinds: ReadonlyMap<string, Engineered>, elementId: string): Engineered {
  const kind = kinds.get(elementId);
  if (kind === undefined) throw new Error(`premium: no hours of engineering are stated for ${elementId}`);
  return kind;
}
