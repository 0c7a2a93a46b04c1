import type { Inspection, SurveyFinding, SurveyLimits } from "@cornerway/schema";
import { assumedThicknessUm } from "./assumed-thickness.ts";

/** What an inspection found, each beside its limit. */
export const surveyFindings = (
  { damages, thicknesses }: Pick<Inspection, "damages" | "thicknesses">,
  limits: SurveyLimits,
): SurveyFinding[] => [
  ...damages.map(({ member, place, kind, sizeUm: foundUm }): SurveyFinding => {
    const limit = limits.damage.find((each) => each.member === member && each.kind === kind);
    const limitUm = limit?.limitUm ?? null;
    return { of: "damage", member, place, kind, foundUm, limitUm, beyond: limitUm === null ? null : foundUm > limitUm };
  }),
  ...thicknesses.map(({ member, thicknessUm: foundUm }): SurveyFinding => {
    const assumedUm = assumedThicknessUm(member);
    const limitUm = assumedUm === null ? null : Math.ceil((assumedUm * limits.leastThickness.permille) / 1000);
    return {
      of: "thickness",
      member,
      foundUm,
      assumedUm,
      limitUm,
      beyond: limitUm === null ? null : foundUm < limitUm,
    };
  }),
];
