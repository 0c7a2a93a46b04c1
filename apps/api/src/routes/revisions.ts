import { NewRevision, ProjectId, Revision, RevisionLetter, RevisionSummary } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer, sendProblem } from "../plugins/problems.ts";
import { sendRevision } from "../services/send-revision.ts";
import { readRevision, readRevisionSummaries } from "../store/revision-rows.ts";

const path = "/api/projects/:projectId/revisions";
const params = z.strictObject({ projectId: ProjectId, letter: RevisionLetter });

const listing = described(
  {
    tag: "revisions",
    id: "listRevisions",
    summary: "The revisions, latest first",
    answers: { 200: z.array(RevisionSummary) },
  },
  { params: projectParams },
);

const reading = described(
  {
    tag: "revisions",
    id: "readRevision",
    summary: "One revision with its scheme and result",
    answers: { 200: Revision },
  },
  { params },
);

const sending = described(
  {
    tag: "revisions",
    id: "sendRevision",
    summary: "Send the draft as the next revision",
    description:
      "Carries the draft number and content digest on the sender's screen, and is refused when the draft is another.",
    answers: { 202: RevisionSummary },
    problems: ["id-reused", "draft-base-ahead", "digest-mismatch", "nothing-drawn", "revision-unchanged"],
  },
  { params: projectParams, body: NewRevision },
);

export const revisionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-revisions" }, schema: listing }, async (request) =>
    readRevisionSummaries(app.database.connection, partOfSender(request).projectId),
  );

  app.get(`${path}/:letter`, { config: { act: "read-revisions" }, schema: reading }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    const revision = await readRevision(app.database.connection, projectId, request.params.letter);
    return revision ?? sendProblem(reply, { code: "not-found" });
  });

  app.post(path, { config: { act: "send-revision" }, schema: sending }, async (request, reply) => {
    const outcome = await sendRevision(app.database, partOfSender(request), request.body);
    if (outcome.ok) app.assessor.wake();
    return answer(reply, outcome, 202);
  });
};
