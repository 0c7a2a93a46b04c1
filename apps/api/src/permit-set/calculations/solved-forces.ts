import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { byTag } from "../paper/by-tag.ts";
import type { SetSource } from "../set-source.ts";
import { supportsByCase, type Solved, type SupportByCase } from "../solved.ts";
import { written } from "../written.ts";

/** Why neither reactions by case nor forces of members stand in the set. */
export const notSolved =
  "Reactions by case and forces of members are printed only where strength was run, by the same version of the engine as prints. Here they are not: wind, snow and earthquake reactions have not been worked out for this set.";

/** Reactions of every support by what acts, as solved. */
export function layCaseReactions(
  flow: CalculationFlow,
  source: SetSource,
  derived: Derived,
  solved: Solved | null,
): void {
  flow.heading("Reactions by case, as solved");
  if (solved === null) {
    flow.paragraph(notSolved);
    return;
  }
  const say = written[source.units];
  flow.paragraph(
    `Unfactored, ${say.forceUnit}, up positive, each case by itself on the line model with every bearing held, so that they add up; a minus is a pull. D is dead load at its heaviest, L imposed load everywhere, S the greatest snow case. W and E: greatest and least over all cases of each, and the greatest force sideways in any direction.`,
  );
  flow.table({
    name: "Reactions by case",
    size: 7.4,
    columns: [
      { heading: "Support", share: 14 },
      ...caseHeadings.map((name) => ({ heading: name, share: 9, right: true })),
      { heading: "W sideways", share: 12, right: true },
      { heading: "E sideways", share: 12, right: true },
    ],
    rows: supportsInOrder(solved, derived).map((support) => [
      derived.tag(support.id),
      ...caseCells(support, say.force),
      cell(support.wind?.level ?? null, say.force),
      cell(support.earthquake?.level ?? null, say.force),
    ]),
  });
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

/** The largest and the least force of every member over all that was solved. */
export function layMemberForces(
  flow: CalculationFlow,
  source: SetSource,
  derived: Derived,
  solved: Solved | null,
): void {
  flow.subject("Largest and least force of each member");
  if (solved === null) {
    flow.paragraph(notSolved);
    return;
  }
  const say = written[source.units];
  flow.paragraph(
    `Over every strength-level run that stands as drawn, locks at play. N in ${say.forceUnit}, compression positive: the greatest and the least, which is a pull where it is negative. V and M are of both axes together; where M is greatest is told along the unit from its front posts and up from its underside, in ${say.lengthUnit}.`,
  );
  flow.table({
    name: "Largest and least forces of members",
    size: 7.2,
    columns: [
      { heading: "Of", share: 8 },
      { heading: "Member", share: 17 },
      { heading: "Place", share: 21 },
      { heading: "N most", share: 9, right: true },
      { heading: "N least", share: 9, right: true },
      { heading: "V", share: 8, right: true },
      { heading: "M", share: 13, right: true },
      { heading: "M along, up", share: 16, right: true },
    ],
    rows: solved.members.map(({ ownerId, part, place, pressed, pulled, shear, moment }) => [
      derived.tag(ownerId),
      part,
      place,
      say.force(pressed.value),
      say.force(pulled.value),
      say.force(shear.value),
      say.moment(moment.value),
      `${say.length(moment.at.uMm)}, ${say.length(moment.at.zMm)}`,
    ]),
  });
}
