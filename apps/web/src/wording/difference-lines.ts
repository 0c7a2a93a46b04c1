import type { RunDifference } from "@cornerway/schema";
import { verdictWords } from "../look/verdict-class.ts";

/** What one run of the engine says otherwise than the one before it, line by line; `nameOf` gives the tag of a unit. */
export function differenceLines(difference: RunDifference, nameOf: (id: string) => string): string[] {
  const { same, scope, whole, units, appeared, gone, turned, heavier } = difference;
  if (same) return ["The same to the last digit."];
  const lines = [
    ...(scope.before === scope.after ? [] : [`Judged now: ${scope.after}; before: ${scope.before}.`]),
    ...(whole.before === whole.after ? [] : [`The whole: ${was(whole)}.`]),
    ...units.map(({ unitId, before, after }) => `${nameOf(unitId)}: ${was({ before, after })}.`),
    ...counted(turned.length, "mark has", "marks have", "another verdict"),
    ...counted(appeared.length, "mark is", "marks are", "new"),
    ...counted(gone.length, "mark is", "marks are", "no longer there"),
    ...counted(heavier.length, "mark stands", "marks stand", "heavier under the same verdict"),
  ];
  return lines.length === 0 ? ["Numbers moved; no verdict and no mark is another."] : lines;
}

type Pair = { before: RunDifference["whole"]["before"] | null; after: RunDifference["whole"]["after"] | null };

const was = ({ before, after }: Pair): string => `${wordsOf(before)} before, ${wordsOf(after)} now`;
const wordsOf = (verdict: Pair["before"]): string => (verdict === null ? "not told of" : verdictWords(verdict));

const counted = (count: number, one: string, many: string, rest: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : many} ${rest}.`];
