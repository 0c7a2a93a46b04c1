import { EventEmitter } from "node:events";
import type { FastifyBaseLogger } from "fastify";
import { Logger, parseCronItems, run, type Runner, type TaskList, type WorkerEvents } from "graphile-worker";
import type pg from "pg";
import type { Task, TaskContext } from "../queue/task.ts";

export interface TaskPlan {
  tasks: readonly Task[];
  /** How many run at a time in this process. */
  atOnce: number;
}

export interface TaskPlace {
  pool: pg.Pool;
  context: Pick<TaskContext, "database" | "config" | "log">;
  /** Told under which name the runner takes its jobs, before it takes any. */
  onName: (runner: string) => void;
  /** Told how long each job took and how it ended. */
  onDone: (task: string, ms: number, failed: boolean) => void;
}

/** Without a notice of the queue, it is looked into this often. */
const lookAgainMs = 2_000;

/** Takes jobs of some tasks from the queue until it is stopped. */
export function runTasks({ tasks, atOnce }: TaskPlan, { pool, context, onName, onDone }: TaskPlace): Promise<Runner> {
  const events: WorkerEvents = new EventEmitter();
  events.on("pool:create", ({ workerPool }) => onName(workerPool.id));
  const taskList: TaskList = {};
  for (const task of tasks)
    taskList[task.name] = async (payload, { job, abortSignal: signal }) => {
      const began = performance.now();
      const tries = { attempt: job.attempts, lastTry: job.attempts >= job.max_attempts };
      const ended = (failed: boolean) => onDone(task.name, performance.now() - began, failed);
      try {
        await task.run(payload, { ...context, ...tries, signal });
        ended(false);
      } catch (error) {
        ended(true);
        throw error;
      }
    };
  return run({
    ...{ pgPool: pool, concurrency: atOnce, pollInterval: lookAgainMs, noHandleSignals: true, events, taskList },
    logger: loggerOf(context.log),
    parsedCronItems: parseCronItems(
      tasks.flatMap(({ name, every }) => (every === undefined ? [] : [{ task: name, match: every }])),
    ),
  });
}

/** The queue's own words in the service's log: what it says of every job is detail there. */
function loggerOf(log: FastifyBaseLogger): Logger {
  return new Logger((scope) => (level, message) => {
    const line = { task: scope.taskIdentifier, job: scope.jobId };
    if (level === "error") log.error(line, message);
    else if (level === "warning") log.warn(line, message);
    else log.debug(line, message);
  });
}
