import { PersonId, ProjectMember } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { pageHeaders, pageQuery, sendPage } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { readMemberPage } from "../services/read-people.ts";

const listing = described(
  {
    tag: "projects",
    id: "listMembers",
    summary: "Who has a part in a project, by name",
    answers: { 200: z.array(ProjectMember) },
    headers: pageHeaders,
  },
  { params: projectParams, querystring: pageQuery(PersonId) },
);

export const memberRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(
    "/api/projects/:projectId/members",
    { config: { act: "read-people" }, schema: listing },
    async (request, reply) => {
      const { person } = signedInOf(request);
      const { projectId } = partOfSender(request);
      return sendPage(request, reply, await readMemberPage(app.database.connection, projectId, person, request.query));
    },
  );
};
