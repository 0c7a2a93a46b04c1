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
  const beside = besideTheModel(source, solved, dead);
  flow.paragraph(
    beside === null
      ? "The sums of D, L and Lr are those of their cases under “Sum of each action case”, with the other sign: what acts and what the ground gives close."
      : `The sums of L and Lr are those of their cases under “Sum of each action case”, with the other sign. That of D is ${say.force(beside.kn)} ${say.forceUnit} less, the steel of ${beside.ids.map(derived.tag).join(", ")}: posts that are not in the line model, since they hold nothing it has, come down by themselves.`,
  );
  return {
    figures: figuresOf(source, derived, supports, { page: flow.number, besideKn: beside?.kn ?? 0 }),
    sumsKn: { dead, live: imposed + roof },
  };
}

/** Less than what is printed last, kN. */
const closesWithinKn = 0.05;

/** Posts that the line model has not, with their weight; null where what acts and what the ground gives close. */
function besideTheModel(
  { scheme, proof }: SetSource,
  { members }: Solved,
  givenKn: number,
): { kn: number; ids: string[] } | null {
  const kn = actingKn(proof, "D most") - givenKn;
  const modelled = new Set(members.map(({ ownerId }) => ownerId));
  const ids = scheme.posts.filter(({ id }) => !modelled.has(id)).map(({ id }) => id);
  return kn <= closesWithinKn || ids.length === 0 ? null : { kn, ids };
}

/** What a case puts on, kN down. */
const actingKn = (proof: SetSource["proof"], caseId: string): number =>
  (proof?.report.cases ?? []).filter(({ id }) => id === caseId).reduce((sum, { zKn }) => sum - zKn, 0);

/** What the supports give is what the cases put on; and what stands beside each pad on the foundation plan. */
function figuresOf(
  source: SetSource,
  { tag }: Derived,
  supports: readonly SupportByCase[],
  { page, besideKn }: { page: string; besideKn: number },
): Figure[] {
  const { proof, scheme } = source;
  const pads = new Set(scheme.pads.map(({ id }) => id));
  const from = "calculation" as const;
  const given = supports.reduce((sum, { dead }) => sum + (dead ?? 0), 0);
  const about = "all supports";
  return [
    { about, quantity: "dead load, kN", value: given, from, page },
    { about, quantity: "dead load, kN", value: actingKn(proof, "D most") - besideKn, from, page },
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
