import { NewStamp } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { pressStamp } from "../services/press-stamp.ts";

export const stampRoutes: FastifyPluginAsyncZod = async (app) => {
  app.post(
    "/api/projects/:projectId/stamps",
    { config: { act: "press-stamp" }, schema: { body: NewStamp } },
    async (request, reply) => answer(reply, await pressStamp(app.database, partOfSender(request), request.body), 201),
  );
};
