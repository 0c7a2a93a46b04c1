import type { Derived } from "../derived.ts";
import type { Figure } from "../figure.ts";
import { byTag } from "../paper/by-tag.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { gravityKn, supportsByCase, type Solved, type SupportByCase } from "../solved.ts";
import { written } from "../written.ts";
import { notSolved } from "./solved-forces.ts";

export type CaseReactions = { figures: Figure[]; sumsKn: { dead: number; live: number } };

/** Reactions of every support by what acts, as solved, with their sums over all supports. */
export function layCaseReactions(
  flow: CalculationFlow,
  source: SetSource,
  derived: Derived,
  solved: Solved | null,
): CaseReactions {
  flow.heading("Reactions by case, as solved");
  if (solved === null) {
    flow.paragraph(notSolved);
    return { figures: [], sumsKn: { dead: 0, live: 0 } };
  }
  const say = written[source.units];
  flow.paragraph(
    `Unfactored, ${say.forceUnit}, up positive, each case by itself on the line model with every bearing held, so that they add up; a minus is a pull. D is dead load at its heaviest, L imposed load on every floor, Lr on every roof, S the greatest snow case. W and E: greatest and least over all cases of each, and the greatest force sideways in any direction.`,
  );
  const supports = supportsInOrder(solved, derived);
  const all = (of: (support: SupportByCase) => number | null): number =>
    supports.reduce((total, support) => total + (of(support) ?? 0), 0);
  const [dead, imposed, roof] = [all((each) => each.dead), all((each) => each.imposed), all((each) => each.roof)];
  flow.table({
    name: "Reactions by case",
    size: 7.4,
    columns: [
      { heading: "Support", share: 14 },
      ...caseHeadings.map((name) => ({ heading: name, share: 9, right: true })),
      { heading: "D + L + Lr", share: 12, right: true },
      { heading: "W sideways", share: 12, right: true },
      { heading: "E sideways", share: 12, right: true },
    ],
    rows: [
      ...supports.map((support) => [
        derived.tag(support.id),
        ...caseCells(support, say.force),
        say.force(gravityKn(support)),
        cell(support.wind?.level ?? null, say.force),
        cell(support.earthquake?.level ?? null, say.force),
      ]),
      [
        "All supports",
        say.force(dead),
        say.force(imposed),
        say.force(roof),
        "",
        "",
        "",
        "",
        "",
        say.force(all(gravityKn)),
      ],
    ],
  });
  flow.paragraph(
    "The sums of D, L and Lr are those of their cases under “Sum of each action case”, with the other sign: what acts and what the ground gives close.",
  );
  return { figures: figuresOf(source, derived, supports, flow.number), sumsKn: { dead, live: imposed + roof } };
}

/** What the supports give is what the cases put on; and what stands beside each pad on the foundation plan. */
function figuresOf(
  { proof, scheme }: SetSource,
  { tag }: Derived,
  supports: readonly SupportByCase[],
  page: string,
): Figure[] {
  const pads = new Set(scheme.pads.map(({ id }) => id));
  const from = "calculation" as const;
  const acting = (id: string): number =>
    (proof?.report.cases ?? []).filter((each) => each.id === id).reduce((sum, { zKn }) => sum - zKn, 0);
  const given = supports.reduce((sum, { dead }) => sum + (dead ?? 0), 0);
  const about = "all supports";
  return [
    { about, quantity: "dead load, kN", value: given, from, page },
    { about, quantity: "dead load, kN", value: acting("D most"), from, page },
    ...supports
      .filter(({ id }) => pads.has(id))
      .map((support) => ({ about: tag(support.id), quantity: "reaction, kN", value: gravityKn(support), from, page })),
  ];
}

/** Supports as they are called, B2 before B10. */
export const supportsInOrder = ({ cases }: Solved, { tag }: Derived): SupportByCase[] =>
  byTag(supportsByCase(cases).map((support) => ({ ...support, tag: tag(support.id) })));

export const caseHeadings = ["D", "L", "Lr", "S", "W most", "W least", "E most", "E least"] as const;

export const caseCells = (
  { dead, imposed, roof, snow, wind, earthquake }: SupportByCase,
  force: (kn: number) => string,
): string[] =>
  [dead, imposed, roof, snow, wind?.most, wind?.least, earthquake?.most, earthquake?.least].map((kn) =>
    cell(kn ?? null, force),
  );

const cell = (kn: number | null, force: (kn: number) => string): string => (kn === null ? "–" : force(kn));
