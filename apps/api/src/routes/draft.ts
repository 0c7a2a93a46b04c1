import { DraftAct } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { draw } from "../services/draw.ts";
import { readDraft } from "../services/read-draft.ts";

export const draftRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/projects/:projectId/draft", { config: { act: "read-draft" } }, async (request) =>
    readDraft(app.database.connection, partOfSender(request).projectId),
  );

  app.post(
    "/api/projects/:projectId/draft/acts",
    { config: { act: "draw" }, schema: { body: DraftAct } },
    async (request, reply) => answer(reply, await draw(app.database, partOfSender(request), request.body)),
  );
};
