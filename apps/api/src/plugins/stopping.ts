import fp from "fastify-plugin";

declare module "fastify" {
  interface FastifyInstance {
    /** True from the moment the service is told to stop. */
    readonly isStopping: () => boolean;
  }
}

const sweepMs = 50;

/**
 * Lets the service end as soon as the requests in flight are answered: a connection kept alive for a next request would
 * otherwise hold it for more than a minute. Fastify closes idle ones once; those that become idle later are closed here.
 */
export default fp(
  async (app) => {
    let stopping = false;
    app.decorate("isStopping", () => stopping);
    app.addHook("preClose", async () => {
      stopping = true;
      const sweep = setInterval(() => app.server.closeIdleConnections(), sweepMs);
      app.server.once("close", () => clearInterval(sweep));
      if (!app.server.listening) clearInterval(sweep);
    });
    app.addHook("onSend", async (_request, reply) => {
      if (stopping) reply.header("connection", "close");
    });
  },
  { name: "stopping" },
);
