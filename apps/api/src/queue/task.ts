import type { FastifyBaseLogger } from "fastify";
import type { Config } from "../config.ts";
import type { Database } from "../store/database.ts";

/** What a task works with. */
export interface TaskContext {
  database: Database;
  config: Config;
  log: FastifyBaseLogger;
  /** 1 at the first try; counts tries that ended with their worker as well. */
  attempt: number;
  /** True at the last try: a throw now gives the job up for good. */
  lastTry: boolean;
  /** Comes when the process is to end; the job is then left for another worker. */
  signal: AbortSignal;
}

/**
 * One kind of work taken from the queue. `run` reads its payload with a schema of its own; what it throws is tried again
 * after a pause. A worker may be killed between doing something and saying so: doing a job twice must do no harm.
 */
export interface Task {
  name: string;
  run(payload: unknown, context: TaskContext): Promise<void>;
  /** When it is put in the queue by the clock, as a cron pattern in UTC. */
  every?: string;
}
