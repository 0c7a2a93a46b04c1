import { NewAnswer, NewQuestion, NewQuestionStep, ProjectId, QuestionId, QuestionNow } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { answerQuestion } from "../services/questions/answer-question.ts";
import { askQuestion } from "../services/questions/ask-question.ts";
import { followQuestion } from "../services/questions/follow-question.ts";
import { readQuestions } from "../services/questions/read-questions.ts";

const path = "/api/projects/:projectId/questions";
const params = z.strictObject({ projectId: ProjectId, questionId: QuestionId });

const listing = described(
  {
    tag: "review",
    id: "listQuestions",
    summary: "The questions to the engineer, each as it stands now",
    description: "Whether an answer still stands is computed against the newest revision, with what has changed since.",
    answers: { 200: z.array(QuestionNow) },
  },
  { params: projectParams },
);

const asking = described(
  {
    tag: "review",
    id: "askQuestion",
    summary: "Ask the engineer about an element of a revision",
    answers: { 201: QuestionNow },
    problems: ["id-reused", "element-unknown"],
  },
  { params: projectParams, body: NewQuestion },
);

const answering = described(
  {
    tag: "review",
    id: "answerQuestion",
    summary: "Answer a question, for the newest revision",
    description: "Carries the two digests on the engineer's screen, and is refused when the revision has others.",
    answers: { 200: QuestionNow },
    problems: ["id-reused", "step-refused", "revision-superseded", "assessment-pending", "digest-mismatch"],
  },
  { params, body: NewAnswer },
);

const following = described(
  {
    tag: "review",
    id: "followQuestion",
    summary: "Give the information wanted, close the question, or open it again",
    description: "Done by the role that asked, never by whoever gave the answer.",
    answers: { 200: QuestionNow },
    problems: ["id-reused", "step-refused", "closer-refused"],
  },
  { params, body: NewQuestionStep },
);

export const questionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-revisions" }, schema: listing }, async (request) =>
    readQuestions(app.database.connection, partOfSender(request)),
  );

  app.post(path, { config: { act: "ask-question" }, schema: asking }, async (request, reply) =>
    answer(reply, await askQuestion(app.database, partOfSender(request), request.body), 201),
  );

  app.post(
    `${path}/:questionId/answer`,
    { config: { act: "answer-question" }, schema: answering },
    async (request, reply) =>
      answer(reply, await answerQuestion(app.database, partOfSender(request), request.params.questionId, request.body)),
  );

  app.post(
    `${path}/:questionId/steps`,
    { config: { act: "ask-question" }, schema: following },
    async (request, reply) =>
      answer(reply, await followQuestion(app.database, partOfSender(request), request.params.questionId, request.body)),
  );
};
