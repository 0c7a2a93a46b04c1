import { AnswerRequest, NewRequest, ProjectId, RequestId } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { answerRequest } from "../services/answer-request.ts";
import { makeRequest } from "../services/make-request.ts";
import { previewRequest } from "../services/preview-request.ts";

const path = "/api/projects/:projectId/requests";
const params = z.strictObject({ projectId: ProjectId, requestId: RequestId });

export const requestRoutes: FastifyPluginAsyncZod = async (app) => {
  app.post(path, { config: { act: "make-request" }, schema: { body: NewRequest } }, async (request, reply) =>
    answer(reply, await makeRequest(app.database, partOfSender(request), request.body), 201),
  );

  app.get(
    `${path}/:requestId/preview`,
    { config: { act: "read-draft" }, schema: { params } },
    async (request, reply) => {
      const { projectId } = partOfSender(request);
      return answer(reply, await previewRequest(app.database.connection, projectId, request.params.requestId));
    },
  );

  app.post(
    `${path}/:requestId/answer`,
    { config: { act: "answer-request" }, schema: { params, body: AnswerRequest } },
    async (request, reply) =>
      answer(reply, await answerRequest(app.database, partOfSender(request), request.params.requestId, request.body)),
  );
};
