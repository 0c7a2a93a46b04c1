import { catalogRows, coverageTable, effectOnVerdict } from "@cornerway/engine";
import { memoryValues } from "@cornerway/schema";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { certaintyWords, significant } from "./words.ts";

/** What is taken as given. */
export function layAssumptions(flow: CalculationFlow, { assessment, proof }: SetSource): void {
  flow.subject("Assumptions");
  flow.table({
    name: "Assumptions",
    columns: [
      { heading: "No.", share: 6 },
      { heading: "Assumed", share: 94 },
    ],
    size: 8.4,
    rows: [...always, ...(assessment.strength?.assumed ?? [])].map((words, at) => [`A${at + 1}`, words]),
  });
  flow.heading("Not judged");
  flow.table({
    name: "Not judged",
    columns: [{ heading: "What no verdict of this set speaks of", share: 1 }],
    size: 8.4,
    rows: (
      assessment.strength?.notJudged ??
      (proof === null ? ["Strength, stability and stiffness of anything: the strength run was not made"] : [])
    ).map((words) => [words]),
  });
}

const always = [
  "Containers are sound, uncut but for what is drawn, and of the generic specification of their ISO 668 type: this is to be found out on each.",
  "Each container is rigid on its bearings where the load path is told by statics.",
  "Pads stand level within the stated error and the ground carries them.",
  "What is not drawn is not there: no finish, plant, stair, deck or neighbour acts that the scheme does not hold.",
];

/** Each limit state of each part: checked, bounded or not covered, what that does to the verdict, and whether it was run. */
export function layCoverage(flow: CalculationFlow, { proof }: SetSource): void {
  flow.subject("Coverage");
  flow.paragraph(
    proof === null
      ? "What a strength run judges, and what it does not. No strength run was made for this revision: in the last column nothing says “run”."
      : "What the strength run judges, and what it does not. Limit states that cannot arise in a part are left out.",
  );
  const rows =
    proof === null
      ? coverageTable().map(({ limitState, element, coverage, why }) => ({
          check: limitState,
          part: element,
          coverage,
          why,
          effect: effectOnVerdict[coverage],
          run: false,
        }))
      : proof.report.coverage;
  flow.table({
    name: "Coverage",
    size: 7,
    columns: [
      { heading: "Limit state", share: 20 },
      { heading: "Part", share: 16 },
      { heading: "Coverage", share: 11 },
      { heading: "What it does to the verdict", share: 26 },
      { heading: "Why", share: 34 },
      { heading: "Run", share: 8 },
    ],
    rows: rows
      .filter(({ coverage }) => coverage !== "does not arise")
      .map(({ check, part, coverage, effect, why, run }) => [
        check,
        part,
        coverage,
        effect,
        why ?? "",
        run ? "run" : "not run",
      ]),
  });
}

/** Values that no text was at hand for, until an engineer confirms each. */
export function layFromMemory(flow: CalculationFlow, source: SetSource): void {
  const { scheme } = source;
  const types = new Set<string>(scheme.containers.map(({ type }) => type));
  const named = new Set(usedSections(scheme));
  const rows = catalogRows.flatMap((row) => {
    if (!("certainty" in row) || row.certainty !== "memory" || !("unit" in row)) return [];
    const used = types.has(row.key) || named.has(row.key) || ["joint", "wall", "site"].includes(row.key);
    return used
      ? [
          [
            row.key,
            row.property.replace(/([A-Z])/g, " $1").toLowerCase(),
            `${significant(row.value)} ${row.unit}`,
            row.source,
            "",
          ],
        ]
      : [];
  });
  flow.subject("Values from memory, still unconfirmed");
  flow.paragraph(
    `${certaintyWords.memory}. The last column is for the engineer who has the text. Values of clauses stand with their clause in each working.`,
  );
  flow.table({
    name: "Values from memory",
    size: 7.4,
    columns: [
      { heading: "Of", share: 12 },
      { heading: "Value", share: 28 },
      { heading: "Taken as", share: 14, right: true },
      { heading: "Source named", share: 32 },
      { heading: "Confirmed by, date", share: 20 },
    ],
    rows,
  });
  layRestsOn(flow, source);
}

/** Clauses and values from memory that this answer rests on, with who held each against its text. */
function layRestsOn(flow: CalculationFlow, { assessment, proof, record }: SetSource): void {
  const confirmed = new Map<string, string>();
  for (const { payload } of record.entries) {
    if (payload?.kind !== "values confirmed") continue;
    const { values, author, against } = payload.confirmation;
    for (const value of values) confirmed.set(value, `${author.name}, against ${against}`);
  }
  const workings = (proof?.workings ?? []).map(({ working }) => working);
  const values = memoryValues(assessment, proof?.report ?? null, workings);
  const open = values.filter((value) => !confirmed.has(value)).length;
  flow.heading("Clauses and values this answer rests on");
  flow.paragraph(`${values.length} in all, ${open} of them confirmed by nobody yet.`);
  flow.table({
    name: "Clauses from memory",
    size: 7.4,
    columns: [
      { heading: "Clause or value", share: 66 },
      { heading: "Confirmed by", share: 34 },
    ],
    rows: values.map((value) => [value, confirmed.get(value) ?? ""]),
  });
}

const usedSections = ({ posts, beams, openings }: SetSource["scheme"]): string[] => [
  ...posts.map(({ section }) => section),
  ...beams.map(({ section }) => section),
  ...openings.flatMap(({ framing }) => (framing === undefined ? [] : [framing.jamb, framing.header])),
];
