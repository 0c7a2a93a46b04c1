import type { NewQuestionStep, QuestionNow } from "@cornerway/schema";
import type { Outcome } from "../../outcome.ts";
import type { Database } from "../../store/database.ts";
import type { Part } from "../part.ts";
import { takeQuestionStep } from "./take-question-step.ts";

/** What the side that asked does: gives the information wanted, closes the question, opens it again. */
export const followQuestion = (
  database: Database,
  sender: Part,
  questionId: string,
  body: NewQuestionStep,
): Promise<Outcome<QuestionNow>> =>
  takeQuestionStep(database, sender, questionId, {
    act: "ask-question",
    body,
    step: body.step,
    stepAt: (by, at) => ({ by, at, ...body }),
  });
