import type { Certainty, CheckWorking } from "@cornerway/schema";
import { figure } from "../paper/formula.ts";

/** What a page says of how far a value can be trusted. */
export const certaintyWords: Readonly<Record<Certainty, string>> = {
  published: "published",
  derived: "derived",
  memory: "from memory, confirm against the text",
  "common practice": "common practice, no published source",
};

export const clauseWords = ({ document, edition, place, certainty }: CheckWorking["clause"]): string =>
  `${[document, edition].filter((part) => part !== "").join("-")}${place === "" ? "" : `, ${place}`}${certainty === "memory" ? " (from memory)" : ""}`;

/** Four significant figures, thousands apart. */
export function significant(value: number): string {
  if (!Number.isFinite(value)) return value > 0 ? "∞" : value < 0 ? "−∞" : "undefined";
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 1000 && size < 1e9) return figure(Math.round(value));
  return figure(Number(value.toPrecision(4)));
}

/** A value with its unit; a pure number has none. */
export const withUnit = (value: number, unit: string): string =>
  unit === "" || unit === "1" ? significant(value) : `${significant(value)} ${unit}`;

/** `V_u` in a line of text: Vu. */
export const plainSymbol = (symbol: string): string => symbol.replaceAll("_", "");
