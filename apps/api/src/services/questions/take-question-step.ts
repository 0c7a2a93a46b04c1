import {
  refuseQuestionStep,
  type Act,
  type Author,
  type Question,
  type QuestionNow,
  type QuestionStep,
} from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { findStep, insertStep } from "../../store/matter-rows.ts";
import { actOf } from "../act-of.ts";
import { bodyDigestOf } from "../body-digest.ts";
import { authorAs, type Part } from "../part.ts";
import { Standings } from "../standings.ts";
import { findQuestion } from "./find-question.ts";
import { questionNow } from "./read-questions.ts";

/** What one side does about a question. */
export interface Following<B extends { id: string }> {
  act: Extract<Act, "ask-question" | "answer-question">;
  body: B;
  step: QuestionStep["step"];
  stepAt(by: Author, at: string): QuestionStep;
  /** Refuses for reasons of its own, before anything is written. */
  refusal?(tx: Connection): Promise<Outcome<never> | undefined>;
  /** Writes what follows from the step. */
  after?(tx: Connection, taken: { by: Author; at: string; entry: number }): Promise<void>;
}

/** Takes one step on a question, under the rules of who may take it when. The same step sent twice is one step. */
export async function takeQuestionStep<B extends { id: string }>(
  database: Database,
  sender: Part,
  questionId: string,
  following: Following<B>,
): Promise<Outcome<QuestionNow>> {
  const { projectId } = sender;
  const { body, act, step } = following;
  const bodyDigest = bodyDigestOf(sender, { questionId, body });
  return actOf(database, sender, act, async (tx, part) => {
    const found = await findQuestion(tx, projectId, questionId);
    if (found === null) return refuse("not-found");
    const standings = new Standings(tx, projectId);
    const question = await questionNow(standings, found.matter);
    const earlier = await findStep(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(question) : refuse("id-reused");
    const by = authorAs(part, act, question.author.role);
    const refused = refuseQuestionStep(question, question.state, step, by);
    if (refused !== undefined) return refuse(refused.code, { detail: refused.detail });
    const own = await following.refusal?.(tx);
    if (own !== undefined) return own;
    const taken = await write(tx, projectId, { question: found.matter, by, following, bodyDigest });
    return done(await questionNow(standings, { ...found.matter, steps: [...found.matter.steps, taken] }));
  });
}

async function write<B extends { id: string }>(
  tx: Connection,
  projectId: string,
  given: { question: Question; by: Author; following: Following<B>; bodyDigest: string },
): Promise<QuestionStep> {
  const { question, by, following, bodyDigest } = given;
  const { id: questionId, number, elementId } = question;
  const { number: entry, at } = await append(tx, projectId, by, (place) => {
    const step = following.stepAt(by, place.at);
    return { kind: "question followed", questionId, number, elementId, step };
  });
  const step = following.stepAt(by, at);
  const row = { id: following.body.id, matterId: questionId, ordinal: question.steps.length + 1, entry, bodyDigest };
  await insertStep(tx, projectId, { ...row, body: step });
  await following.after?.(tx, { by, at, entry });
  return step;
}
