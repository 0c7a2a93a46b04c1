import fp from "fastify-plugin";
import type { Config } from "../config.ts";
import { startWorker, type RunningWorker } from "../worker/start-worker.ts";

/** Takes jobs from the queue beside whatever else this process does. */
export default fp(
  async (app, { config }: { config: Config }) => {
    const { database, log, metrics } = app;
    let worker: RunningWorker | undefined;
    app.addHook("onReady", async () => {
      const onDone = (task: string, ms: number, failed: boolean) => metrics?.job(task, ms / 1000, failed);
      worker = await startWorker({ config, database, log, onDone });
    });
    app.addHook("onClose", () => worker?.close());
    metrics?.add("cornerway_assessment_threads", "Threads of the engine, by what they do", ["state"], () => {
      const { running, waiting, threads } = worker?.threads.state ?? { running: 0, waiting: 0, threads: 0 };
      const counts = { running, idle: threads - running, "tasks waiting for one": waiting };
      return Object.entries(counts).map(([state, value]) => ({ labels: { state }, value }));
    });
    metrics?.add("cornerway_queue_connections", "Connections to the queue, by what they do", ["state"], () =>
      Object.entries(worker?.connections() ?? {}).map(([state, value]) => ({ labels: { state }, value })),
    );
  },
  { name: "worker", dependencies: ["database", "metrics"] },
);
