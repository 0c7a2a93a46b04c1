import rateLimit, { type FastifyRateLimitStore } from "@fastify/rate-limit";
import fp from "fastify-plugin";
import { isOfApi } from "./is-of-api.ts";
import { SharedCounts } from "./shared-counts.ts";

const windowMs = 60_000;

/** Keeps one browser from taking the service for itself: requests are counted for all processes together. */
export default fp(
  async (app, { requestsPerMinute }: { requestsPerMinute: number }) => {
    const counts = new SharedCounts(app.database.connection, app.log, windowMs);
    app.addHook("preClose", () => counts.close());
    await app.register(rateLimit, {
      max: requestsPerMinute,
      timeWindow: windowMs,
      hook: "preHandler", // after the session is read
      keyGenerator: (request) => `requests ${request.signedIn?.sessionId ?? request.ip}`,
      allowList: (request) => !isOfApi(request),
      store: storeOf(counts),
    });
  },
  { name: "rate-limit", dependencies: ["database", "signed-in"] },
);

/** The plug-in makes its store itself; all it makes count in one place. */
function storeOf(counts: SharedCounts): new () => FastifyRateLimitStore {
  return class Store implements FastifyRateLimitStore {
    incr(key: string, told: (error: Error | null, result?: { current: number; ttl: number }) => void): void {
      told(null, counts.count(key));
    }
    child(): Store {
      return this;
    }
  };
}
