import type { CostBook, CostFigure, UnitSystem } from "@cornerway/schema";
import { labourFigures, rateFigures, readAmount, type FigureOf } from "./cost-figures.ts";

/** What was typed over a book and not written into it yet; what was left alone is not in it. */
export interface Edits {
  currency?: string;
  figures: Readonly<Record<string, { amount?: string; source?: string }>>;
}

export const noEdits: Edits = { figures: {} };

export const placeOf = ({ group, name }: FigureOf): string => `/${group}/${name}`;

/** The book with what was typed, and the places where that is no amount. */
export function writtenBook(book: CostBook, edits: Edits, units: UnitSystem): { book: CostBook; faults: Set<string> } {
  const faults = new Set<string>();
  const written = (figure: FigureOf, before: CostFigure): CostFigure => {
    const { amount, source } = edits.figures[placeOf(figure)] ?? {};
    const read = amount === undefined ? before.amount : readAmount(figure, amount, units);
    if (read === null) faults.add(placeOf(figure));
    const kept = source === undefined ? before.source : source.trim() === "" ? null : source.trim();
    return { amount: read ?? before.amount, source: kept };
  };
  const next = {
    currency: edits.currency?.trim().toUpperCase() ?? book.currency,
    rates: { ...book.rates },
    labour: { ...book.labour },
  };
  for (const figure of [...rateFigures, ...labourFigures])
    if (figure.group === "rates") next.rates[figure.name] = written(figure, book.rates[figure.name]);
    else next.labour[figure.name] = written(figure, book.labour[figure.name]);
  return { book: next, faults };
}
