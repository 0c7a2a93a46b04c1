import { NewRevision, ProjectId, RevisionLetter } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { partOfSender } from "../plugins/part.ts";
import { answer, sendProblem } from "../plugins/problems.ts";
import { sendRevision } from "../services/send-revision.ts";
import { readRevision, readRevisionSummaries } from "../store/revision-rows.ts";

const path = "/api/projects/:projectId/revisions";
const params = z.strictObject({ projectId: ProjectId, letter: RevisionLetter });

export const revisionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-revisions" } }, async (request) =>
    readRevisionSummaries(app.database.connection, partOfSender(request).projectId),
  );

  app.get(`${path}/:letter`, { config: { act: "read-revisions" }, schema: { params } }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    const revision = await readRevision(app.database.connection, projectId, request.params.letter);
    return revision ?? sendProblem(reply, { code: "not-found" });
  });

  app.post(path, { config: { act: "send-revision" }, schema: { body: NewRevision } }, async (request, reply) => {
    const outcome = await sendRevision(app.database, partOfSender(request), request.body);
    if (outcome.ok) app.assessor.wake();
    return answer(reply, outcome, 202);
  });
};
