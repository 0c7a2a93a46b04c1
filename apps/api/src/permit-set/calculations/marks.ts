import { markSentences, verdicts } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";

/** Every mark of the recorded assessment as the engineer reads it, worst first. */
export function layMarks(flow: CalculationFlow, { assessment, units, scheme }: SetSource, derived: Derived): void {
  const names = new Map(scheme.containers.map(({ id }) => [id, derived.tag(id)]));
  for (const mark of assessment.marks) for (const id of mark.elements) names.set(id, derived.tag(id));
  const worst = assessment.marks.toSorted((a, b) => verdicts.indexOf(b.verdict) - verdicts.indexOf(a.verdict));
  flow.subject("What the engine notes, worst first");
  flow.paragraph(
    `Of the whole: ${assessment.verdict}. Judged: ${assessment.scope}. ${assessment.questions} geometric and static questions were asked.`,
  );
  flow.table({
    name: "Marks",
    size: 7.8,
    columns: [
      { heading: "Verdict", share: 15 },
      { heading: "Where", share: 13 },
      { heading: "What and why", share: 46 },
      { heading: "Basis", share: 26 },
    ],
    rows: withBasisOnce(
      worst.map((mark) => {
        const { heading, body, detail } = markSentences(mark, names, "engineer", units);
        const where = mark.elements.slice(0, 4).map((id) => derived.tag(id));
        return { heading, where: where.join(", "), body, basis: detail ?? "" };
      }),
    ),
  });
}

/** A basis that stands further up already is told by where. */
function withBasisOnce(rows: readonly Record<"heading" | "where" | "body" | "basis", string>[]): string[][] {
  const told = new Map<string, string>();
  return rows.map(({ heading, where, body, basis }) => {
    const above = told.get(basis);
    if (above === undefined) told.set(basis, where);
    return [heading, where, body, above === undefined || basis === "" ? basis : `As for ${above}.`];
  });
}
