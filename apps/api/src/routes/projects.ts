import { Project, ProjectId, ProjectSummary } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { pageHeaders, pageQuery, sendPage } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { sendTagged, taggedHeaders, tagHeaders, tagOf } from "../description/tagged.ts";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { readProject, readProjects } from "../services/read-project.ts";

const listing = described(
  {
    tag: "projects",
    id: "listProjects",
    summary: "The projects you have a part in, by name",
    answers: { 200: z.array(ProjectSummary) },
    headers: pageHeaders,
  },
  { querystring: pageQuery(ProjectId) },
);

const reading = described(
  {
    tag: "projects",
    id: "readProject",
    summary: "One project",
    answers: { 200: Project, 304: null },
    headers: tagHeaders,
  },
  { params: projectParams, headers: taggedHeaders },
);

export const projectRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/projects", { config: { scope: "read", byLink: true }, schema: listing }, async (request, reply) => {
    const { person } = signedInOf(request);
    return sendPage(request, reply, await readProjects(app.database.connection, person.id, request.query));
  });

  app.get(
    "/api/projects/:projectId",
    { config: { act: "read-revisions" }, schema: reading },
    async (request, reply) => {
      const project = await readProject(app.database.connection, partOfSender(request));
      return sendTagged(request, reply, tagOf(JSON.stringify(project)), project);
    },
  );
};
