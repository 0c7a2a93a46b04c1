import { Project, ProjectSummary } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { readProject, readProjects } from "../services/read-project.ts";

const listing = described(
  {
    tag: "projects",
    id: "listProjects",
    summary: "The projects you have a part in",
    answers: { 200: z.array(ProjectSummary) },
  },
  {},
);

const reading = described(
  { tag: "projects", id: "readProject", summary: "One project", answers: { 200: Project } },
  { params: projectParams },
);

export const projectRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/projects", { config: { scope: "read" }, schema: listing }, async (request) =>
    readProjects(app.database.connection, signedInOf(request).person.id),
  );

  app.get("/api/projects/:projectId", { config: { act: "read-revisions" }, schema: reading }, async (request) =>
    readProject(app.database.connection, partOfSender(request)),
  );
};
