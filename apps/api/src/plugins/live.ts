import fp from "fastify-plugin";
import { Live } from "../realtime/live.ts";

declare module "fastify" {
  interface FastifyInstance {
    live: Live;
  }
}

export default fp(
  async (app, { url }: { url: string }) => {
    const live = new Live(app.database.connection, url, app.log);
    app.decorate("live", live);
    app.metrics?.add("cornerway_sockets", "Open sockets", [], () => [{ labels: {}, value: live.size }]);
    app.addHook("onReady", () => live.start());
    app.addHook("preClose", () => live.close());
  },
  { name: "live", dependencies: ["database", "metrics"] },
);
