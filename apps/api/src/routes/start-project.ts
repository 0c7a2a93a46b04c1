import { KeptProject, ProjectStarted, StartProject } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { repeatableHeaders, repeatableOf } from "../description/repeatable.ts";
import { answer } from "../plugins/problems.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { startProject } from "../services/start-project.ts";
import { readKeptProjects } from "../store/project-rows.ts";

const starting = described(
  {
    tag: "projects",
    id: "startProject",
    summary: "Start a project",
    answers: { 201: ProjectStarted },
    problems: ["key-reused"],
  },
  { headers: repeatableHeaders, body: StartProject },
);

const listing = described(
  {
    tag: "projects",
    id: "listKeptProjects",
    summary: "Every project of the service, for its administrators",
    answers: { 200: z.array(KeptProject) },
  },
  {},
);

/** What administrators of the service do: they see to projects and their people, never to what is drawn. */
export const startProjectRoutes: FastifyPluginAsyncZod = async (app) => {
  const config = { administrator: true };

  app.post("/api/projects", { config, schema: starting }, async (request, reply) => {
    const { person } = signedInOf(request);
    return answer(reply, await startProject(app.database, person, request.body, repeatableOf(request)), 201);
  });

  app.get("/api/administration/projects", { config, schema: listing }, async () =>
    readKeptProjects(app.database.connection),
  );
};
