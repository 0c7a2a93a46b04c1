import rateLimit from "@fastify/rate-limit";
import fp from "fastify-plugin";
import { isOfApi } from "./is-of-api.ts";

/** Keeps one browser from taking a process for itself; the limit on sign-in is counted for all processes together. */
export default fp(
  async (app, { requestsPerMinute }: { requestsPerMinute: number }) => {
    await app.register(rateLimit, {
      max: requestsPerMinute,
      timeWindow: "1 minute",
      hook: "preHandler", // after the session is read
      keyGenerator: (request) => request.signedIn?.sessionId ?? request.ip,
      allowList: (request) => !isOfApi(request),
    });
  },
  { name: "rate-limit", dependencies: ["signed-in"] },
);
