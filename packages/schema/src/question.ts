import { z } from "zod";
import { Digest, ElementId, QuestionId, StepId } from "./ids.ts";
import { mostConditions, NewCondition } from "./new-condition.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { Standing } from "./standing.ts";
import { Role } from "./roles.ts";
import { personText } from "./text.ts";

/** Where on the sheets a question is put: the drawing on which its element was pointed at. */
export const questionViews = [
  ...["south elevation", "east elevation", "north elevation", "west elevation"],
  ...["plan", "unfolded wall"],
] as const;
export const QuestionView = z.enum(questionViews).meta({ id: "QuestionView" });
export type QuestionView = z.infer<typeof QuestionView>;

/** A day without a time, as people agree on one. */
export const Day = z.iso.date().meta({ id: "Day" });

export const mostOptions = 10;

/** What the engineer answers. Options come in the order of what they cost, cheapest first. */
export const Answer = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("as drawn"), text: personText(4000).nullable() }),
    z.strictObject({
      kind: z.literal("with conditions"),
      text: personText(4000).nullable(),
      conditions: z.array(NewCondition).min(1).max(mostConditions),
    }),
    z.strictObject({
      kind: z.literal("no, but these options"),
      text: personText(4000),
      options: z.array(personText(1000)).min(1).max(mostOptions),
    }),
    z.strictObject({ kind: z.literal("need information"), text: personText(4000) }),
  ])
  .meta({ id: "Answer" });
export type Answer = z.infer<typeof Answer>;
export type AnswerKind = Answer["kind"];
export const answerKinds: readonly AnswerKind[] = Answer.options.map((option) => option.shape.kind.value);

/** What an answer is given for: the newest revision with the two digests on the engineer's screen. */
const boundTo = { revision: RevisionLetter, contentDigest: Digest, resultDigest: Digest };
const done = { id: StepId, by: Author, at: Moment };

/** What was done about a question after it was asked; the last step decides how it stands. */
export const QuestionStep = z
  .discriminatedUnion("step", [
    z.strictObject({ step: z.literal("answered"), ...done, ...boundTo, answer: Answer }),
    z.strictObject({ step: z.literal("information given"), ...done, text: personText(4000) }),
    z.strictObject({ step: z.literal("closed"), ...done }),
    z.strictObject({ step: z.literal("reopened"), ...done, text: personText(2000) }),
  ])
  .meta({ id: "QuestionStep" });
export type QuestionStep = z.infer<typeof QuestionStep>;
export type AnsweredStep = Extract<QuestionStep, { step: "answered" }>;

const asked = {
  id: QuestionId,
  elementId: ElementId,
  view: QuestionView,
  revision: RevisionLetter,
  wanted: personText(4000),
  /** What the asker could give up or move, where there is anything. */
  mayGive: personText(2000).nullable(),
  /** The day by which the answer is needed. */
  neededBy: Day,
};

/** A question to the engineer, put at one element in one view of a revision. */
export const Question = z
  .strictObject({ ...asked, number: z.int().min(1), author: Author, askedAt: Moment, steps: z.array(QuestionStep) })
  .meta({ id: "Question" });
export type Question = z.infer<typeof Question>;

export const NewQuestion = z.strictObject(asked).meta({ id: "NewQuestion" });
export type NewQuestion = z.infer<typeof NewQuestion>;

export const NewAnswer = z.strictObject({ id: StepId, ...boundTo, answer: Answer }).meta({ id: "NewAnswer" });
export type NewAnswer = z.infer<typeof NewAnswer>;

/** What the side that asked does about its question. */
export const NewQuestionStep = z
  .discriminatedUnion("step", [
    z.strictObject({ step: z.literal("information given"), id: StepId, text: personText(4000) }),
    z.strictObject({ step: z.literal("closed"), id: StepId }),
    z.strictObject({ step: z.literal("reopened"), id: StepId, text: personText(2000) }),
  ])
  .meta({ id: "NewQuestionStep" });
export type NewQuestionStep = z.infer<typeof NewQuestionStep>;

export const questionStates = ["asked", "needs information", "answered", "stale", "closed"] as const;
export const QuestionState = z.enum(questionStates).meta({ id: "QuestionState" });
export type QuestionState = z.infer<typeof QuestionState>;

/** A question as it stands now: what its last answer still covers, and which role owes the next step. */
export const QuestionNow = Question.extend({
  state: QuestionState,
  owedBy: Role.nullable(),
  /** Null while there is no answer. */
  standing: Standing.nullable(),
}).meta({ id: "QuestionNow" });
export type QuestionNow = z.infer<typeof QuestionNow>;
