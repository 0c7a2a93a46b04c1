import { AuthorityProfile, ProjectAuthority } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { describeAuthority, readAuthority } from "../services/plan-check/authority.ts";

const path = "/api/projects/:projectId/authority";
const tag = "permit sets";

const reading = described(
  {
    ...{ tag, id: "readAuthority", summary: "How the authority wants a set that comes again marked and answered" },
    answers: { 200: ProjectAuthority },
  },
  { params: projectParams },
);

const describing = described(
  {
    ...{ tag, id: "describeAuthority", summary: "Lay down how the authority wants sets marked and comments answered" },
    description: "Sets printed from then on are marked so, and replies name what it asks. Each is kept in the record.",
    answers: { 200: ProjectAuthority },
  },
  { params: projectParams, body: AuthorityProfile },
);

export const authorityRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;
  app.get(path, { config: { act: "read-revisions" }, schema: reading }, (request) =>
    readAuthority(database.connection, partOfSender(request).projectId),
  );

  app.post(path, { config: { act: "keep-comments" }, schema: describing }, async (request, reply) =>
    answer(reply, await describeAuthority(database, partOfSender(request), request.body)),
  );
};
