import type { CostBook, LabourName, PremiumLine, RateName } from "@cornerway/schema";
import type { Engineered } from "./engineered-kinds.ts";
import type { TakeOff } from "./take-off-line.ts";

/** What a line is paid for: hours of each unit of it at an hourly rate, and a rate by the piece or kilogram. */
type Paid = { readonly labour?: LabourName; readonly hoursAt?: RateName; readonly piece?: RateName };

/** A line with its hours, its money in the book's currency, not rounded, and whether any figure in it has no source. */
export function pricedLine(line: TakeOff, kinds: ReadonlyMap<string, Engineered>, book: CostBook): PremiumLine {
  const { labour, hoursAt, piece } = paidFor(line, kinds);
  const figures = [
    ...(labour === undefined ? [] : [book.labour[labour]]),
    ...[hoursAt, piece].flatMap((name) => (name === undefined ? [] : [book.rates[name]])),
  ];
  const hours = labour === undefined ? 0 : line.quantity * book.labour[labour].amount;
  const ofHours = hoursAt === undefined ? 0 : hours * book.rates[hoursAt].amount;
  const ofPieces = piece === undefined ? 0 : line.quantity * book.rates[piece].amount;
  const forShow = figures.some(({ source }) => source === null);
  return { ...line, hours, hoursAt: hoursAt ?? null, piecesAt: piece ?? null, money: ofHours + ofPieces, forShow };
}

function paidFor({ item, where, elementId }: TakeOff, kinds: ReadonlyMap<string, Engineered>): Paid {
  const hand = where === "shop" ? "shop hour" : "site hour";
  switch (item) {
    case "cut":
      return { labour: "cut, per m", hoursAt: hand };
    case "paint repair":
      return { labour: "paint repair, per m of cut", hoursAt: hand };
    case "weld of 5 mm":
      return { labour: "weld of 5 mm, per m", hoursAt: hand };
    case "steel":
      return { piece: "steel, kg in place" };
    case "lock":
      return { piece: "lock, each", labour: "set a lock", hoursAt: hand };
    case "anchor":
      return { piece: "anchor, each", labour: "set an anchor", hoursAt: hand };
    case "pad":
      return { piece: "pad, each" };
    case "pad concrete":
      return { piece: "pad concrete, m³" };
    case "crane lift":
      return { labour: "lift a part, crane", hoursAt: "crane hour" };
    case "engineering":
      return { labour: engineered(kinds, elementId), hoursAt: "engineering hour" };
  }
}

function engineered(kinds: ReadonlyMap<string, Engineered>, elementId: string): Engineered {
  const kind = kinds.get(elementId);
  if (kind === undefined) throw new Error(`premium: no hours of engineering are stated for ${elementId}`);
  return kind;
}
