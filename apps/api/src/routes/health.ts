import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { sendProblem } from "../plugins/problems.ts";

/** `/health`: the process answers. `/ready`: it can do its work, so a balancer may send it requests. */
export const healthRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/health", async () => ({ status: "up" }));
  app.get("/ready", async (_request, reply) => {
    if (app.isStopping()) return sendProblem(reply, { code: "unready" });
    await app.database.connection.$queryRaw`select 1`;
    return { status: "ready" };
  });
};
