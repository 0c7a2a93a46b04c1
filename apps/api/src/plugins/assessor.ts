import fp from "fastify-plugin";
import { Assessor } from "../assessment/assessor.ts";
import { WorkerPool } from "../assessment/worker-pool.ts";

declare module "fastify" {
  interface FastifyInstance {
    assessor: Assessor;
  }
}

export default fp(
  async (app, { threads, limitMs }: { threads: number; limitMs: number }) => {
    const assessor = new Assessor(app.database, new WorkerPool({ threads, limitMs }), app.log);
    app.decorate("assessor", assessor);
    app.addHook("onReady", async () => assessor.wake());
    app.addHook("onClose", () => assessor.close());
  },
  { name: "assessor", dependencies: ["database"] },
);
