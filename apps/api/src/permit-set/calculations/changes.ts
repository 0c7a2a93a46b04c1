import { changesSince, deltaSign, wholeChanges } from "../changes.ts";
import { changeWords } from "../change-words.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";

/** What is not as it was in the set printed before, each under the number beside its delta. */
export function layChanges(flow: CalculationFlow, source: SetSource): void {
  flow.subject("Changes since the set before");
  if (source.earlier.length === 0) {
    flow.paragraph("No set of an earlier revision was printed: nothing is marked as changed.");
    return;
  }
  for (const words of [...changeWords(source), ...wholeChanges(source)]) flow.paragraph(words);
  const sign = source.authority.marks === "none" ? "" : deltaSign(source);
  flow.table({
    name: "Changes",
    columns: [
      { heading: "No.", share: 8 },
      { heading: "Delta", share: 10 },
      { heading: "Element", share: 22 },
      { heading: "What", share: 60 },
    ],
    rows: changesSince(source).map(({ number, tag, what }) => [String(number), sign, tag, what]),
  });
}
