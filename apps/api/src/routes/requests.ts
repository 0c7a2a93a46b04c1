import {
  AnswerRequest,
  ChangeRequest,
  NewRequest,
  ProjectId,
  RequestAnswered,
  RequestId,
  RequestPreview,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { afterNumber, limit, pageHeaders, sendPage } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { answerRequest } from "../services/answer-request.ts";
import { makeRequest } from "../services/make-request.ts";
import { previewRequest } from "../services/preview-request.ts";
import { readRequestPage } from "../services/read-thread.ts";

const path = "/api/projects/:projectId/requests";
const params = z.strictObject({ projectId: ProjectId, requestId: RequestId });

const querystring = z.strictObject({ after: afterNumber, limit });

const listing = described(
  {
    tag: "review",
    id: "listRequests",
    summary: "Change requests in the order of their numbers",
    answers: { 200: z.array(ChangeRequest) },
    headers: pageHeaders,
  },
  { params: projectParams, querystring },
);

const making = described(
  {
    tag: "review",
    id: "makeRequest",
    summary: "Ask for a change, as operations on the latest revision",
    answers: { 201: ChangeRequest },
    problems: ["id-reused", "revision-superseded", "digest-mismatch", "draft-refused"],
  },
  { params: projectParams, body: NewRequest },
);

const previewing = described(
  {
    tag: "review",
    id: "previewRequest",
    summary: "What taking a change request in would do to the draft",
    answers: { 200: RequestPreview },
  },
  { params },
);

const answering = described(
  {
    tag: "review",
    id: "answerRequest",
    summary: "Take a change request in, or decline it",
    answers: { 200: RequestAnswered },
    problems: ["already-answered", "draft-base-ahead", "draft-conflict", "draft-refused", "id-reused"],
  },
  { params, body: AnswerRequest },
);

export const requestRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-revisions" }, schema: listing }, async (request, reply) =>
    sendPage(request, reply, await readRequestPage(app.database.connection, partOfSender(request), request.query)),
  );

  app.post(path, { config: { act: "make-request" }, schema: making }, async (request, reply) =>
    answer(reply, await makeRequest(app.database, partOfSender(request), request.body), 201),
  );

  app.get(
    `${path}/:requestId/preview`,
    { config: { act: "read-draft" }, schema: previewing },
    async (request, reply) => {
      const { projectId } = partOfSender(request);
      return answer(reply, await previewRequest(app.database.connection, projectId, request.params.requestId));
    },
  );

  app.post(
    `${path}/:requestId/answer`,
    { config: { act: "answer-request" }, schema: answering },
    async (request, reply) =>
      answer(reply, await answerRequest(app.database, partOfSender(request), request.params.requestId, request.body)),
  );
};
