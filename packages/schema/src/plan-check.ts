import { z } from "zod";
import { PersonId } from "./ids.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { personLine, personText } from "./text.ts";

/** What a reply says of a comment: the correction is made, or why none is. */
export const replyForms = ["done", "explained", "not applicable"] as const;
export const ReplyForm = z.enum(replyForms).meta({ id: "ReplyForm" });
export type ReplyForm = z.infer<typeof ReplyForm>;

/** A comment of the authority that checks the plans, as it came. `order` counts those of a project, `number` is the authority's. */
export const RaisedComment = z.strictObject({
  id: z.uuid(),
  order: z.int().min(1),
  number: z.string(),
  discipline: z.string().nullable(),
  text: z.string(),
  /** The sheet the authority names, where it does. */
  about: z.string().nullable(),
  broughtInBy: Author,
  broughtInAt: Moment,
});
export type RaisedComment = z.infer<typeof RaisedComment>;

const reply = {
  form: ReplyForm,
  text: personText(4000),
  /** Of the set that mends or explains it. */
  revision: RevisionLetter,
  /** Where it is found, as the set names its sheets, details and pages. */
  sheet: personLine(40),
  detail: personLine(40).nullable(),
  page: personLine(40).nullable(),
};

/** What is done about a comment. */
export const NewCommentStep = z
  .discriminatedUnion("step", [
    z.strictObject({ id: z.uuid(), step: z.literal("assigned"), to: PersonId }),
    z.strictObject({ id: z.uuid(), step: z.literal("answered"), ...reply }),
    z.strictObject({ id: z.uuid(), step: z.literal("closed") }),
    z.strictObject({ id: z.uuid(), step: z.literal("opened again"), why: personText(2000) }),
  ])
  .meta({ id: "NewCommentStep" });
export type NewCommentStep = z.infer<typeof NewCommentStep>;

const done = { id: z.uuid(), by: Author, at: Moment };

export const CommentStep = z
  .discriminatedUnion("step", [
    z.strictObject({ ...done, step: z.literal("assigned"), to: PersonId, toName: z.string() }),
    z.strictObject({ ...done, step: z.literal("answered"), ...reply }),
    z.strictObject({ ...done, step: z.literal("closed") }),
    z.strictObject({ ...done, step: z.literal("opened again"), why: z.string() }),
  ])
  .meta({ id: "CommentStep" });
export type CommentStep = z.infer<typeof CommentStep>;

/** A comment with all that was done about it. */
export const KeptComment = RaisedComment.extend({ steps: z.array(CommentStep) });
export type KeptComment = z.infer<typeof KeptComment>;

/** A comment as it stands. None is ever removed: as many go out as came in. */
export const PlanCheckComment = RaisedComment.extend({
  state: z.enum(["open", "answered", "closed"]),
  assignedTo: z.strictObject({ id: PersonId, name: z.string() }).nullable(),
  /** The last one; null while there is none, or since it was opened again. */
  reply: z.strictObject({ ...reply, by: Author, at: Moment }).nullable(),
  closed: z.strictObject({ by: Author, at: Moment }).nullable(),
}).meta({ id: "PlanCheckComment" });
export type PlanCheckComment = z.infer<typeof PlanCheckComment>;

/** How a comment stands after its steps. */
export function commentNow({ steps, ...raised }: KeptComment): PlanCheckComment {
  const now: PlanCheckComment = { ...raised, state: "open", assignedTo: null, reply: null, closed: null };
  for (const step of steps) {
    switch (step.step) {
      case "assigned":
        now.assignedTo = { id: step.to, name: step.toName };
        break;
      case "answered": {
        const { id: _id, step: _step, ...said } = step;
        Object.assign(now, { state: "answered", reply: said });
        break;
      }
      case "closed":
        Object.assign(now, { state: "closed", closed: { by: step.by, at: step.at } });
        break;
      case "opened again":
        Object.assign(now, { state: "open", reply: null, closed: null });
        break;
    }
  }
  return now;
}

/** Why a step cannot follow; undefined when it can. Nobody closes what they answered themselves. */
export function refuseCommentStep(
  { state, reply: said }: PlanCheckComment,
  step: NewCommentStep["step"],
  personId: string,
): "closed already" | "not answered" | "not closed" | "own answer" | undefined {
  if (step === "opened again") return state === "open" ? "not closed" : undefined;
  if (state === "closed") return "closed already";
  if (step !== "closed") return undefined;
  if (said === null) return "not answered";
  return said.by.id === personId ? "own answer" : undefined;
}

/** The register with its count: comments in, and how many of them are answered and closed. */
export const PlanCheckRegister = z
  .strictObject({
    comments: z.array(PlanCheckComment),
    count: z.strictObject({ in: z.int(), open: z.int(), answered: z.int(), closed: z.int() }),
  })
  .meta({ id: "PlanCheckRegister" });
export type PlanCheckRegister = z.infer<typeof PlanCheckRegister>;

/** Of one project. */
export const mostComments = 1000;

/** A comment sheet as it came: CSV with a heading row, or numbered lines pasted from a letter. */
export const BringInComments = z
  .strictObject({ id: z.uuid(), form: z.enum(["csv", "lines"]), text: personText(500_000) })
  .meta({ id: "BringInComments" });
export type BringInComments = z.infer<typeof BringInComments>;
