import fastify, { LogController, type FastifyInstance } from "fastify";
import type { Config } from "./config.ts";
import databasePlugin from "./plugins/database.ts";
import metricsPlugin from "./plugins/metrics.ts";
import problemsPlugin from "./plugins/problems.ts";
import stoppingPlugin from "./plugins/stopping.ts";
import validationPlugin from "./plugins/validation.ts";
import workerPlugin from "./plugins/worker.ts";
import { healthRoutes } from "./routes/health.ts";

/** A process that only takes jobs from the queue; over HTTP it says whether it is there and ready, and nothing else. */
export async function buildWorker(config: Config): Promise<FastifyInstance> {
  const app = fastify({
    forceCloseConnections: "idle",
    logController: new LogController({ disableRequestLogging: true }),
    logger: { level: config.logLevel },
  });
  await app.register(stoppingPlugin);
  await app.register(validationPlugin);
  await app.register(problemsPlugin);
  await app.register(databasePlugin, { url: config.databaseUrl });
  await app.register(metricsPlugin, { at: config.metrics });
  await app.register(workerPlugin, { config });
  await app.register(healthRoutes);
  return app;
}
