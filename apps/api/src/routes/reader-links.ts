import { NewReaderLink, PersonId, ProjectId, ReaderLinkMade } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { endReaderLink } from "../services/reader-link/end-reading.ts";
import { makeReaderLink } from "../services/reader-link/make-reader-link.ts";

const path = "/api/projects/:projectId/reader-links";

const making = described(
  {
    tag: "projects",
    id: "makeReaderLink",
    summary: "Make a link by which someone without an account reads",
    description: "Such as the permit reviewer. It is told once, and good until it ends or is withdrawn.",
    answers: { 201: ReaderLinkMade },
    problems: ["too-many-kept"],
  },
  { params: projectParams, body: NewReaderLink },
);

const ending = described(
  { tag: "projects", id: "endReaderLink", summary: "Withdraw a reader's link", answers: { 204: null } },
  { params: z.strictObject({ projectId: ProjectId, readerId: PersonId }) },
);

export const readerLinkRoutes: FastifyPluginAsyncZod = async (app) => {
  app.post(path, { config: { act: "invite" }, schema: making }, async (request, reply) =>
    answer(reply, await makeReaderLink(app.database, partOfSender(request), request.body), 201),
  );

  app.delete(`${path}/:readerId`, { config: { act: "invite" }, schema: ending }, async (request, reply) =>
    answer(reply, await endReaderLink(app.database, partOfSender(request), request.params.readerId), 204),
  );
};
