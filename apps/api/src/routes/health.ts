import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { sendProblem } from "../plugins/problems.ts";

const status = (word: string) => z.strictObject({ status: z.literal(word) });

const alive = described(
  { tag: "watching", id: "isAlive", summary: "Whether the process answers", answers: { 200: status("up") } },
  {},
);

const ready = described(
  { tag: "watching", id: "isReady", summary: "Whether the process can do its work", answers: { 200: status("ready") } },
  {},
);

/** `/health`: the process answers. `/ready`: it can do its work, so a balancer may send it requests. */
export const healthRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/health", { schema: alive }, async () => ({ status: "up" }));
  app.get("/ready", { schema: ready }, async (_request, reply) => {
    if (app.isStopping()) return sendProblem(reply, { code: "unready" });
    await app.database.connection.$queryRaw`select 1`;
    return { status: "ready" };
  });
};
