import type { NewAnswer, QuestionNow } from "@cornerway/schema";
import type { Outcome } from "../../outcome.ts";
import type { Database } from "../../store/database.ts";
import { raiseConditions, refuseConditions } from "../conditions/raise-conditions.ts";
import { newestRevision } from "../newest-revision.ts";
import type { Part } from "../part.ts";
import { takeQuestionStep } from "./take-question-step.ts";

const places = { pointer: "/answer/conditions", raisedBy: "engineer" } as const;

/** The engineer's answer, bound to the newest revision and its result; its conditions stay open until they are closed. */
export function answerQuestion(
  database: Database,
  sender: Part,
  questionId: string,
  body: NewAnswer,
): Promise<Outcome<QuestionNow>> {
  const { projectId } = sender;
  const { answer, revision } = body;
  const conditions = answer.kind === "with conditions" ? answer.conditions : [];
  return takeQuestionStep(database, sender, questionId, {
    act: "answer-question",
    body,
    step: "answered",
    stepAt: (by, at) => ({ step: "answered", by, at, ...body }),
    async refusal(tx) {
      const newest = await newestRevision(tx, projectId, body);
      return newest.ok ? refuseConditions(tx, projectId, conditions, places) : newest;
    },
    after: (tx, { by, at, entry }) =>
      raiseConditions(tx, projectId, conditions, {
        ...{ source: "answer", sourceId: body.id, revision, author: by, raisedAt: at },
        entry,
      }),
  });
}
