import { lastAnswer, mayReadEntry, Question, questionOwedBy, questionState, type QuestionNow } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readMatters } from "../../store/matter-rows.ts";
import type { Part } from "../part.ts";
import { Standings } from "../standings.ts";

/** The questions of a project in the order they were asked, each as it stands now; none for whoever may see none. */
export async function readQuestions(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
): Promise<QuestionNow[]> {
  if (!mayReadEntry(roles, "question asked")) return [];
  const standings = new Standings(db, projectId);
  const questions = await readMatters(db, projectId, "question", Question);
  return Promise.all(questions.map((question) => questionNow(standings, question)));
}

export async function questionNow(standings: Standings, question: Question): Promise<QuestionNow> {
  const answer = lastAnswer(question);
  const standing = answer === undefined ? null : await standings.of(question.elementId, answer);
  const state = questionState(question, standing?.state ?? null);
  return { ...question, state, owedBy: questionOwedBy(question, state), standing };
}
