import type { DamageLimit, SurveyLimits } from "@cornerway/schema";

const circular = "IMO CSC.1/Circ.138/Rev.1, table of serious structural deficiencies: out of service beyond this";

const seen = (member: DamageLimit["member"], bentMm: number, tornMm: number): DamageLimit[] =>
  both(member, bentMm, tornMm, { source: circular, certainty: "published" });
const remembered = (member: DamageLimit["member"], bentMm: number, tornMm: number): DamageLimit[] =>
  both(member, bentMm, tornMm, { source: `${circular}; this row from memory`, certainty: "memory" });

const both = (
  member: DamageLimit["member"],
  bentMm: number,
  tornMm: number,
  from: Pick<DamageLimit, "source" | "certainty">,
): DamageLimit[] => [
  { member, kind: "bent", limitUm: bentMm * 1000, ...from },
  { member, kind: "torn", limitUm: tornMm * 1000, ...from },
];

/**
 * What containers are held against where a project sets nothing else. The circular is about fitness for transport: passing it
 * proves little for a building, and what is beyond it is not built in as it is.
 */
export const usualSurveyLimits: SurveyLimits = {
  damage: [
    ...seen("top side rail", 60, 45),
    ...seen("bottom side rail", 100, 75),
    ...seen("door header", 80, 80),
    ...remembered("top end rail", 80, 80),
    ...remembered("door sill", 100, 100),
    ...remembered("bottom end rail", 100, 100),
    ...remembered("corner post", 50, 50),
  ],
  leastThickness: {
    permille: 900,
    source:
      "common practice, no published source: a tenth of the thickness, beyond which the steel is checked by itself",
    certainty: "common practice",
  },
};
