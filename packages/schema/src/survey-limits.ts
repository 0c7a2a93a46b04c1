import { z } from "zod";
import { SurveyLimitsId } from "./ids.ts";
import { MemberName } from "./part-names.ts";
import { PositiveLengthUm } from "./quantity.ts";
import { Author, Moment } from "./review.ts";
import { DamageKind } from "./survey.ts";
import { personText } from "./text.ts";
import { Certainty } from "./verdict.ts";

/** Damage beyond this is not accepted. */
export const DamageLimit = z
  .strictObject({
    member: MemberName,
    kind: DamageKind,
    limitUm: PositiveLengthUm,
    source: personText(300),
    certainty: Certainty,
  })
  .meta({ id: "DamageLimit" });
export type DamageLimit = z.infer<typeof DamageLimit>;

export const mostDamageLimits = 40;

const limits = {
  damage: z
    .array(DamageLimit)
    .max(mostDamageLimits)
    .refine(
      (all) => new Set(all.map(({ member, kind }) => `${member} ${kind}`)).size === all.length,
      "one limit for each member and kind of damage",
    ),
  /** The least part of the assumed thickness that is accepted, thousandths. */
  leastThickness: z.strictObject({
    permille: z.int().min(1).max(1000),
    source: personText(300),
    certainty: Certainty,
  }),
};

/** What a container is held against when it is judged. */
export const SurveyLimits = z.strictObject(limits).meta({ id: "SurveyLimits" });
export type SurveyLimits = z.infer<typeof SurveyLimits>;

export const NewSurveyLimits = z
  .strictObject({ id: SurveyLimitsId, limits: SurveyLimits })
  .meta({ id: "NewSurveyLimits" });
export type NewSurveyLimits = z.infer<typeof NewSurveyLimits>;

/** Limits of a project, set by its engineer. */
export const ProjectSurveyLimits = z
  .strictObject({ ...NewSurveyLimits.shape, number: z.int().min(1), author: Author, setAt: Moment })
  .meta({ id: "ProjectSurveyLimits" });
export type ProjectSurveyLimits = z.infer<typeof ProjectSurveyLimits>;

/** One damage or thickness beside its limit; `beyond` is null where nothing is stated for it and the engineer judges alone. */
export const SurveyFinding = z
  .discriminatedUnion("of", [
    z.strictObject({
      of: z.literal("damage"),
      member: MemberName,
      place: z.string(),
      kind: DamageKind,
      foundUm: z.int(),
      limitUm: z.int().nullable(),
      beyond: z.boolean().nullable(),
    }),
    z.strictObject({
      of: z.literal("thickness"),
      member: MemberName,
      foundUm: z.int(),
      /** What the engine assumes of a container of the type; null where it assumes none. */
      assumedUm: z.int().nullable(),
      limitUm: z.int().nullable(),
      beyond: z.boolean().nullable(),
    }),
  ])
  .meta({ id: "SurveyFinding" });
export type SurveyFinding = z.infer<typeof SurveyFinding>;
