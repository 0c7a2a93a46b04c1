import { z } from "zod";
import { assessmentScopes } from "./assessment.ts";
import { Digest, OptionId, OptionSetId, StepId } from "./ids.ts";
import { Author, Moment } from "./review.ts";
import { personLine, personText } from "./text.ts";
import { Verdict } from "./verdict.ts";

/** Alternatives that are looked at side by side: more do not fit on a sheet. */
export const mostAlternatives = 6;

/** Places of a set: a withdrawn alternative keeps its own and leaves room for another. */
export const mostPlaces = 24;

/** What is to be chosen between: "Where the stair goes". */
export const NewOptionSet = z.strictObject({ id: OptionSetId, name: personLine(120) }).meta({ id: "NewOptionSet" });
export type NewOptionSet = z.infer<typeof NewOptionSet>;

/** Keeps the draft on the architect's screen as the next alternative of a set. */
export const NewOption = z
  .strictObject({ id: OptionId, name: personLine(80), draftNumber: z.int().min(0), contentDigest: Digest })
  .meta({ id: "NewOption" });
export type NewOption = z.infer<typeof NewOption>;

/** One alternative: a drawing under its digest, which never changes. */
export const KeptOption = z
  .strictObject({
    id: OptionId,
    place: z.int().min(1).max(mostPlaces),
    name: z.string(),
    contentDigest: Digest,
    containers: z.int(),
    author: Author,
    keptAt: Moment,
  })
  .meta({ id: "KeptOption" });
export type KeptOption = z.infer<typeof KeptOption>;

/** Carries the digest of the drawing on the screen of whoever picks. */
export const NewPick = z
  .strictObject({ id: StepId, optionId: OptionId, contentDigest: Digest, reason: personText(2000).nullable() })
  .meta({ id: "NewPick" });
export type NewPick = z.infer<typeof NewPick>;

/** Which alternative is built. A later pick takes the place of an earlier one; every one stays. */
export const OptionPick = z
  .strictObject({ ...NewPick.shape, reason: z.string().nullable(), author: Author, pickedAt: Moment })
  .meta({ id: "OptionPick" });
export type OptionPick = z.infer<typeof OptionPick>;

/** Takes an alternative back; it stays where it stands, with what was said of it. */
export const NewWithdrawal = z
  .strictObject({ id: StepId, reason: personText(2000).nullable() })
  .meta({ id: "NewWithdrawal" });
export type NewWithdrawal = z.infer<typeof NewWithdrawal>;

/** That an alternative is no longer one, by whoever kept it: it is not picked any more. */
export const OptionWithdrawal = z
  .strictObject({ id: StepId, reason: z.string().nullable(), author: Author, withdrawnAt: Moment })
  .meta({ id: "OptionWithdrawal" });
export type OptionWithdrawal = z.infer<typeof OptionWithdrawal>;

/** The engine's answer to an alternative, by load path and strength, from the service's own queue. */
export const OptionAnswer = z
  .discriminatedUnion("state", [
    z.strictObject({ state: z.literal("waiting") }),
    z.strictObject({
      state: z.literal("done"),
      verdict: Verdict,
      scope: z.enum(assessmentScopes),
      marks: z.int(),
      engineVersion: z.string(),
      resultDigest: Digest,
    }),
    z.strictObject({ state: z.literal("failed"), why: z.string() }),
    /** A newer engine answered, and this build cannot read it. */
    z.strictObject({ state: z.literal("unreadable") }),
  ])
  .meta({ id: "OptionAnswer" });
export type OptionAnswer = z.infer<typeof OptionAnswer>;

/** What an alternative costs above the same containers stacked plainly, by the cost book as it is now. */
export const OptionPrice = z
  .strictObject({
    total: z.number(),
    currency: z.string(),
    forShow: z.boolean(),
    /** True where something is not in the total: what the engineer must settle, or a section nobody knows. */
    standsApart: z.boolean(),
    /** All steel that is added, kg. */
    steelKg: z.number(),
  })
  .meta({ id: "OptionPrice" });
export type OptionPrice = z.infer<typeof OptionPrice>;

export const OptionNow = z
  .strictObject({
    ...KeptOption.shape,
    withdrawn: OptionWithdrawal.nullable(),
    answer: OptionAnswer,
    price: OptionPrice,
  })
  .meta({ id: "OptionNow" });
export type OptionNow = z.infer<typeof OptionNow>;

const opened = {
  id: OptionSetId,
  number: z.int().min(1),
  name: z.string(),
  author: Author,
  openedAt: Moment,
};
export const OptionSetOpened = z.strictObject(opened).meta({ id: "OptionSetOpened" });
export type OptionSetOpened = z.infer<typeof OptionSetOpened>;

/** Alternatives side by side, and which of them was picked; the last pick counts. */
export const OptionSetNow = z
  .strictObject({
    ...opened,
    options: z.array(OptionNow).max(mostPlaces),
    picks: z.array(OptionPick),
  })
  .meta({ id: "OptionSetNow" });
export type OptionSetNow = z.infer<typeof OptionSetNow>;

/** Why a set takes no further alternative; undefined while it does. */
export function whyFull(options: readonly Pick<OptionNow, "withdrawn">[]): string | undefined {
  const standing = options.filter(({ withdrawn }) => withdrawn === null).length;
  if (standing >= mostAlternatives)
    return `a set holds ${mostAlternatives} alternatives; withdraw one, or open another set`;
  if (options.length >= mostPlaces)
    return `a set keeps ${mostPlaces} alternatives, those withdrawn among them; open another set`;
  return undefined;
}

/** The one that counts; undefined while nothing was picked. */
export const pickedOf = ({ picks }: Readonly<{ picks: readonly OptionPick[] }>): OptionPick | undefined => picks.at(-1);
