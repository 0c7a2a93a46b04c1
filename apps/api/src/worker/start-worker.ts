import type { FastifyBaseLogger } from "fastify";
import { WorkerPool } from "../assessment/worker-pool.ts";
import type { Config } from "../config.ts";
import { openPool } from "../database/open-pool.ts";
import { quickTasks } from "../queue/tasks.ts";
import type { TaskContext } from "../queue/task.ts";
import type { Database } from "../store/database.ts";
import { AssessOption } from "./assess-option.ts";
import { AssessRevision } from "./assess-revision.ts";
import { clearAway } from "./clear-away.ts";
import { printSet } from "./print-set.ts";
import { RollCall } from "./roll-call.ts";
import { sendNotices } from "./send-notices.ts";
import { keepRunning } from "./keep-running.ts";
import type { TaskPlace, TaskPlan } from "./run-tasks.ts";
import { listenForStops } from "./stop-listener.ts";
import { takeUpOptions } from "./take-up-options.ts";
import { takeUpSets } from "./take-up-sets.ts";
import { takeUpWaiting } from "./take-up-waiting.ts";

export interface RunningWorker {
  /** The threads that assess. */
  threads: WorkerPool;
  /** Connections to the queue: in all, idle, and work that waits for one. */
  connections(): Record<"all" | "idle" | "work waiting for one", number>;
  close(): Promise<void>;
}

export interface WorkerPlace {
  config: Config;
  database: Database;
  log: FastifyBaseLogger;
  onDone: TaskPlace["onDone"];
}

const quickAtOnce = 4;
/** Each in a thread of its own. */
const setsAtOnce = 1;
/** All runners at full work, and each with a connection that listens. */
const spareConnections = 4;

/** Takes jobs from the queue: assessments as many as there are threads for, quick work beside them. */
export async function startWorker({ config, database, log, onDone }: WorkerPlace): Promise<RunningWorker> {
  const { databaseUrl, assessmentThreads: threads, assessmentLimitMs: limitMs, assessmentHelpers: helpers } = config;
  const pool = openPool(databaseUrl, threads + setsAtOnce + quickAtOnce + spareConnections);
  const threadPool = new WorkerPool({ threads, limitMs, helpers });
  const assessing = new AssessRevision(threadPool);
  const rollCall = new RollCall(database.connection, log);
  const context = { database, config, log };
  const place = { pool, context, onDone, rollCall };
  const stops = await listenForStops(databaseUrl, {
    stop: (key) => assessing.stop(key),
    heardAgain: () => void assessing.stopAnswered(context),
    log,
  });
  await takeUpNow(context);
  const plans: TaskPlan[] = [
    { tasks: [assessing, new AssessOption(threadPool)], atOnce: threads },
    { tasks: [printSet], atOnce: setsAtOnce },
    { tasks: [takeUpWaiting, takeUpSets, takeUpOptions, clearAway, sendNotices, ...quickTasks], atOnce: quickAtOnce },
  ];
  const runners = await Promise.all(plans.map((plan) => keepRunning(plan, place)));
  return {
    threads: threadPool,
    connections: () => ({ all: pool.totalCount, idle: pool.idleCount, "work waiting for one": pool.waitingCount }),
    async close() {
      await threadPool.close();
      await Promise.all(runners.map((stop) => stop()));
      await stops.close();
      await rollCall.close();
      await pool.end();
    },
  };
}

/** What was left when nobody worked is taken up at once, not when the clock says so. */
async function takeUpNow(context: Pick<TaskContext, "database" | "config" | "log">): Promise<void> {
  const signal = new AbortController().signal;
  await takeUpWaiting.run({}, { ...context, signal, attempt: 1, lastTry: true });
}
