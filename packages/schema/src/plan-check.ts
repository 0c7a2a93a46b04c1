import { z } from "zod";
import { PersonId } from "./ids.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { personLine, personText } from "./text.ts";

/** What a reply says of a comment: the correction is made, or why none is. */
export const replyForms = ["done", "explained", "not applicable"] as const;
export const ReplyForm = z.enum(replyForms).meta({ id: "ReplyForm" });
export type ReplyForm = z.infer<typeof ReplyForm>;

/** Where in the set a reply is to be found, as the set names its sheets, details and pages. */
const ReplyPlace = {
  sheet: personLine(40),
  detail: personLine(40).nullable(),
  page: personLine(40).nullable(),
};

/**
 * One comment of the authority that checks the plans, in its own words. `number` is the authority's. The order is that in
 * which they were brought in, and none is ever removed: as many are answered as came.
 */
export const PlanCheckComment = z
  .strictObject({
    id: z.uuid(),
    order: z.int().min(1),
    number: z.string(),
    discipline: z.string().nullable(),
    text: z.string(),
    /** The sheet the authority names, where it does. */
    about: z.string().nullable(),
    broughtInAt: Moment,
    assignedTo: z.strictObject({ id: PersonId, name: z.string() }).nullable(),
    state: z.enum(["open", "answered", "closed"]),
    reply: z
      .strictObject({
        form: ReplyForm,
        text: z.string(),
        revision: RevisionLetter,
        sheet: z.string(),
        detail: z.string().nullable(),
        page: z.string().nullable(),
        by: Author,
        at: Moment,
      })
      .nullable(),
    closed: z.strictObject({ by: Author, at: Moment }).nullable(),
  })
  .meta({ id: "PlanCheckComment" });
export type PlanCheckComment = z.infer<typeof PlanCheckComment>;

/** The register with its count: comments in, and how many of them are answered and closed. */
export const PlanCheckRegister = z
  .strictObject({
    comments: z.array(PlanCheckComment),
    count: z.strictObject({ in: z.int(), answered: z.int(), closed: z.int() }),
  })
  .meta({ id: "PlanCheckRegister" });
export type PlanCheckRegister = z.infer<typeof PlanCheckRegister>;

export const mostComments = 1000;

/** A comment sheet as it came: CSV with a heading row, or numbered lines pasted from a letter. */
export const BringInComments = z
  .strictObject({ id: z.uuid(), form: z.enum(["csv", "lines"]), text: z.string().min(1).max(1_000_000) })
  .meta({ id: "BringInComments" });
export type BringInComments = z.infer<typeof BringInComments>;

export const AssignComment = z.strictObject({ personId: PersonId }).meta({ id: "AssignComment" });
export type AssignComment = z.infer<typeof AssignComment>;

export const ReplyToComment = z
  .strictObject({ form: ReplyForm, text: personText(4000), revision: RevisionLetter, ...ReplyPlace })
  .meta({ id: "ReplyToComment" });
export type ReplyToComment = z.infer<typeof ReplyToComment>;
