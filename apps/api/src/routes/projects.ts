import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { readProject, readProjects } from "../services/read-project.ts";

export const projectRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/projects", async (request) => readProjects(app.database.connection, signedInOf(request).person.id));

  app.get("/api/projects/:projectId", { config: { act: "read-revisions" } }, async (request) =>
    readProject(app.database.connection, partOfSender(request)),
  );
};
