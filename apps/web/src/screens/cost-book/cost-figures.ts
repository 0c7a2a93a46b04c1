import { labourNames, rateNames, type LabourName, type RateName, type UnitSystem } from "@cornerway/schema";
import { M3_PER_YD3 } from "../../units/volume-words.ts";
import { readNumber } from "../../units/read-number.ts";

/** What one figure of the book is per: the unit the book stores, shown in the reader's. */
type Per = "h" | "each" | "kg" | "m" | "m³";

export type FigureOf = { group: "rates"; name: RateName } | { group: "labour"; name: LabourName };

const rateWords: Record<RateName, { label: string; per: Per }> = {
  "shop hour": { label: "Work in the shop", per: "h" },
  "site hour": { label: "Work on site", per: "h" },
  "engineering hour": { label: "The engineer", per: "h" },
  "crane hour": { label: "Crane", per: "h" },
  "steel, kg in place": { label: "Steel in place", per: "kg" },
  "lock, each": { label: "Lock", per: "each" },
  "anchor, each": { label: "Anchor", per: "each" },
  "pad, each": { label: "Pad of usual size", per: "each" },
  "pad concrete, m³": { label: "Pad beyond the usual size", per: "m³" },
};

const labourWords: Record<LabourName, { label: string; per: Per }> = {
  "cut, per m": { label: "Cut a sheet", per: "m" },
  "paint repair, per m of cut": { label: "Paint a cut edge", per: "m" },
  "weld of 5 mm, per m": { label: "Weld, 5 mm fillet", per: "m" },
  "set a lock": { label: "Set a lock", per: "each" },
  "set an anchor": { label: "Set an anchor", per: "each" },
  "lift a part, crane": { label: "Lift a part, crane", per: "each" },
  "engineering, opening": { label: "Engineer, an opening", per: "each" },
  "engineering, post": { label: "Engineer, a post", per: "each" },
  "engineering, beam": { label: "Engineer, a beam", per: "each" },
  "engineering, seat or made connection": { label: "Engineer, a seat or made connection", per: "each" },
  "engineering, tie": { label: "Engineer, a tie", per: "each" },
};

export const rateFigures = rateNames.map((name): FigureOf => ({ group: "rates", name }));
export const labourFigures = labourNames.map((name): FigureOf => ({ group: "labour", name }));

const wordsOf = (figure: FigureOf) => (figure.group === "rates" ? rateWords[figure.name] : labourWords[figure.name]);

export const figureLabel = (figure: FigureOf): string => wordsOf(figure).label;

/** "USD/lb", "h/m" …: what a figure is written in. */
export function figureUnit(figure: FigureOf, currency: string, units: UnitSystem): string {
  const { per } = wordsOf(figure);
  const shown = units === "US" ? { kg: "lb", m: "ft", "m³": "yd³", h: "h", each: "each" }[per] : per;
  return `${figure.group === "rates" ? currency : "h"}${shown === "each" ? " each" : `/${shown}`}`;
}

/** Exact by the international yard and pound of 1959. */
const perShown: Record<Per, number> = { kg: 0.453_592_37, m: 0.3048, "m³": M3_PER_YD3, h: 1, each: 1 };

const factorOf = (figure: FigureOf, units: UnitSystem) => (units === "US" ? perShown[wordsOf(figure).per] : 1);

/** A stored amount in the reader's unit, to four figures after the point at most. */
export const printAmount = (figure: FigureOf, amount: number, units: UnitSystem): string =>
  String(Number((amount * factorOf(figure, units)).toFixed(4)));

/** What was typed, as the amount the book stores; null where it is no number from nought up. */
export function readAmount(figure: FigureOf, text: string, units: UnitSystem): number | null {
  const typed = readNumber(text);
  if (typed === null || typed < 0) return null;
  return Number((typed / factorOf(figure, units)).toFixed(6));
}
