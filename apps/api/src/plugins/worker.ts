import fp from "fastify-plugin";
import type { Config } from "../config.ts";
import { startWorker, type RunningWorker } from "../worker/start-worker.ts";

/** Takes jobs from the queue beside whatever else this process does. */
export default fp(
  async (app, { config }: { config: Config }) => {
    let worker: RunningWorker | undefined;
    app.addHook("onReady", async () => {
      worker = await startWorker({ config, database: app.database, log: app.log, onDone: () => undefined });
    });
    app.addHook("onClose", () => worker?.close());
  },
  { name: "worker", dependencies: ["database"] },
);
