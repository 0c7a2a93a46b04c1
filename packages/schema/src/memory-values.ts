import { z } from "zod";
import type { Assessment } from "./assessment.ts";
import { ConfirmationId } from "./ids.ts";
import { Author, Moment } from "./review.ts";
import type { StrengthReport } from "./strength-report.ts";
import { personText } from "./text.ts";
import type { CheckWorking } from "./working.ts";

/** One value or clause that rests on memory, in words that name it; the same words are the same value. */
export const MemoryValue = z.string().min(1).max(1000).meta({ id: "MemoryValue" });

export const mostConfirmed = 500;

const confirmed = {
  id: ConfirmationId,
  values: z.array(MemoryValue).min(1).max(mostConfirmed),
  /** The text they were held against: document, edition, place. */
  against: personText(1000),
};

export const NewConfirmation = z.strictObject(confirmed).meta({ id: "NewConfirmation" });
export type NewConfirmation = z.infer<typeof NewConfirmation>;

/** A named engineer has held values from memory against the published text. It holds for the whole project. */
export const Confirmation = z
  .strictObject({ ...confirmed, number: z.int().min(1), author: Author, confirmedAt: Moment })
  .meta({ id: "Confirmation" });
export type Confirmation = z.infer<typeof Confirmation>;

/**
 * Every value from memory that enters an answer: bases of marks, clauses and symbols of workings, loads, combinations. A
 * symbol that is the result of another working is left out: what that rests on is found there.
 */
export function memoryValues(
  result: Assessment,
  report: StrengthReport | null,
  workings: readonly CheckWorking[],
): string[] {
  const { loads = [], combinations = [], windLimits = [] } = report ?? {};
  const all = workings.flatMap(withParts);
  const worked = new Set([...all, ...loads].map(({ title }) => title));
  const bases = result.marks.filter(({ certainty }) => certainty === "memory").map(({ basis }) => basis);
  const clauses = [...all, ...loads, ...combinations, ...windLimits].map(({ clause }) => clause);
  const symbols = all
    .flatMap(({ symbols: own, clause }) => own.map((symbol) => ({ ...symbol, clause })))
    .filter(({ source }) => !worked.has(source ?? ""));
  const found = [
    ...bases,
    ...clauses.filter(({ certainty }) => certainty === "memory").map(clauseWords),
    ...symbols.filter(({ certainty }) => certainty === "memory").map(symbolWords),
  ];
  return [...new Set(found)].sort();
}

const withParts = (working: CheckWorking): CheckWorking[] => [working, ...working.parts.flatMap(withParts)];

const clauseWords = ({ document, edition, place }: CheckWorking["clause"]): string =>
  `${document}, ${edition}, ${place}`;

/** As many figures as a published value has: beyond them lies only the conversion of units. */
const figures = 6;

type NamedSymbol = CheckWorking["symbols"][number] & Pick<CheckWorking, "clause">;

/** A symbol by its meaning, its number and where it stands; the clause it is put into where nothing else is said. */
function symbolWords({ meaning, value, unit, source, clause }: NamedSymbol): string {
  const number = `${Number(value.toPrecision(figures))}${unit === "1" ? "" : ` ${unit}`}`;
  return `${meaning}: ${number}, ${source ?? clauseWords(clause)}`;
}
