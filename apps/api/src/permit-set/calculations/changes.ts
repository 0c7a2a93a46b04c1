import { changesSince, wholeChanges } from "../changes.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";

/** What is not as it was in the set printed before, each under the number beside its delta. */
export function layChanges(flow: CalculationFlow, source: SetSource): void {
  const { before, revision } = source;
  flow.subject("Changes since the set before");
  if (before === null) {
    flow.paragraph("No set of an earlier revision was printed: nothing is clouded.");
    return;
  }
  flow.paragraph(
    `Against revision ${before.letter}, of which the last set before this one was printed. On plans and elevations each change is in a cloud, with the delta of revision ${revision.letter} and its number here; clouds of earlier sets are taken off.`,
  );
  for (const words of wholeChanges(source)) flow.paragraph(words);
  flow.table({
    name: "Changes",
    columns: [
      { heading: "No.", share: 8 },
      { heading: "Delta", share: 10 },
      { heading: "Element", share: 22 },
      { heading: "What", share: 60 },
    ],
    rows: changesSince(source).map(({ number, tag, what }) => [String(number), revision.letter, tag, what]),
  });
}
