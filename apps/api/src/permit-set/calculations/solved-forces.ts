import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import type { Solved } from "../solved.ts";
import { written } from "../written.ts";

/** Why neither reactions by case nor forces of members stand in the set. */
export const notSolved =
  "Reactions by case and forces of members are printed only where strength was run and they were recorded with it. Here they were not: wind, snow and earthquake reactions have not been worked out for this set.";

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
