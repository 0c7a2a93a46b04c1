import type { ProblemCode } from "./problem.ts";
import type { AnsweredStep, Question, QuestionState, QuestionStep } from "./question.ts";
import type { Role } from "./roles.ts";
import type { Standing } from "./standing.ts";

/** Who acts, and in which role. */
export interface Acting {
  id: string;
  role: Role;
}

/** Why a step cannot be taken. */
export interface StepRefusal {
  code: Extract<ProblemCode, "step-refused" | "closer-refused" | "role-refused">;
  detail: string;
}

/** The last answer of a question, also where it was closed since; undefined where none was given after it was reopened. */
export function lastAnswer({ steps }: Pick<Question, "steps">): AnsweredStep | undefined {
  const turn = steps.findLast(({ step }) => step === "answered" || step === "reopened" || step === "information given");
  return turn?.step === "answered" ? turn : undefined;
}

/** How a question stands. An answer that went stale is stale whether the question was closed or not. */
export function questionState(question: Pick<Question, "steps">, standing: Standing["state"] | null): QuestionState {
  const answer = lastAnswer(question);
  if (answer === undefined) return "asked";
  if (answer.answer.kind === "need information") return "needs information";
  if (standing === "stale") return "stale";
  return question.steps.at(-1)?.step === "closed" ? "closed" : "answered";
}

/** The role that owes the next step: the engineer an answer, the role that asked its information or its closing. */
export function questionOwedBy(question: Pick<Question, "author">, state: QuestionState): Role | null {
  if (state === "closed") return null;
  return state === "asked" || state === "stale" ? "engineer" : question.author.role;
}

const mayFollow: Record<QuestionStep["step"], readonly QuestionState[]> = {
  answered: ["asked", "needs information", "answered", "stale"],
  "information given": ["needs information"],
  closed: ["answered"],
  reopened: ["answered", "stale", "closed"],
};

/**
 * Why someone may not take a step on a question that stands so; undefined when they may. Only the engineer answers; only
 * the role that asked does the rest; whoever gave the answer never closes it.
 */
export function refuseQuestionStep(
  question: Pick<Question, "author" | "steps">,
  state: QuestionState,
  step: QuestionStep["step"],
  by: Acting,
): StepRefusal | undefined {
  if (step === "answered" && by.role !== "engineer")
    return { code: "role-refused", detail: "only the engineer answers" };
  if (step !== "answered" && by.role !== question.author.role)
    return { code: "closer-refused", detail: `the ${question.author.role} asked it` };
  if (!mayFollow[step].includes(state)) return { code: "step-refused", detail: `the question is ${state}` };
  if (step === "closed" && lastAnswer(question)?.by.id === by.id)
    return { code: "closer-refused", detail: "whoever answered does not close it" };
  return undefined;
}
