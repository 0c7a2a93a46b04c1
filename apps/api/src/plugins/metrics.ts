import fp from "fastify-plugin";
import { countJobs } from "../queue/queue-rows.ts";
import { Metrics } from "../watch/metrics.ts";
import { serveMetrics } from "../watch/metrics-server.ts";

declare module "fastify" {
  interface FastifyInstance {
    metrics: Metrics | undefined;
    /** The port at which the metrics are given, once the service is ready. */
    metricsPort(): number | undefined;
  }
}

/** Counts and times what this process does, when it is to be watched. */
export default fp(
  async (app, { at }: { at: { host: string; port: number } | undefined }) => {
    const metrics = at === undefined ? undefined : new Metrics();
    let server: Awaited<ReturnType<typeof serveMetrics>> | undefined;
    app.decorate("metrics", metrics);
    app.decorate("metricsPort", () => server?.port);
    if (metrics === undefined || at === undefined) return;
    metrics.add("cornerway_queue_jobs", "Jobs in the queue, by task and state", ["task", "state"], async () =>
      (await countJobs(app.database.connection)).map(({ count: value, ...labels }) => ({ labels, value })),
    );
    app.addHook("onResponse", async (request, reply) => {
      const route = request.routeOptions.url ?? "none";
      metrics.request({ method: request.method, route, status: reply.statusCode }, reply.elapsedTime / 1000);
    });
    app.addHook("onReady", async () => {
      server = await serveMetrics(metrics, at);
      app.log.info({ port: server.port }, "metrics");
    });
    app.addHook("onClose", () => server?.close());
  },
  { name: "metrics", dependencies: ["database"] },
);
