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

/** Every value from memory that enters an answer: bases of marks, clauses and symbols of workings, loads, combinations. */
export function memoryValues(
  result: Assessment,
  report: StrengthReport | null,
  workings: readonly CheckWorking[],
): string[] {
  const found = new Set<string>();
  for (const { certainty, basis } of result.marks) if (certainty === "memory") found.add(basis);
  for (const working of workings) collect(working, found);
  for (const { clause } of [...(report?.loads ?? []), ...(report?.combinations ?? []), ...(report?.windLimits ?? [])])
    if (clause.certainty === "memory") found.add(clauseWords(clause));
  return [...found].sort();
}

function collect({ clause, symbols, parts }: CheckWorking, found: Set<string>): void {
  if (clause.certainty === "memory") found.add(clauseWords(clause));
  for (const { meaning, value, unit, source, certainty } of symbols)
    if (certainty === "memory") found.add(`${meaning}: ${value} ${unit}${source === undefined ? "" : `, ${source}`}`);
  for (const part of parts) collect(part, found);
}

const clauseWords = ({ document, edition, place }: CheckWorking["clause"]): string =>
  `${document}, ${edition}, ${place}`;
