import type { Digest, Scheme } from "@cornerway/schema";
import type { Assessed } from "../services/record-assessment.ts";
import type { SchemeAssessed } from "./assess-scheme.ts";
import { FromThread } from "./from-thread.ts";
import { engineEntry } from "./start-thread.ts";
import { ThreadPool, type Heard, type TaskOptions } from "./thread-pool.ts";

export interface Task {
  scheme: Scheme;
  contentDigest: Digest;
}

export interface WorkerPoolPlan {
  /** Tasks at once. */
  threads: number;
  limitMs: number;
  /** Threads that share each task with the one that has it; none unless said. */
  helpers?: number;
  entry?: URL;
}

/** Assesses in threads of their own. */
export class WorkerPool {
  readonly #pool: ThreadPool<Task, SchemeAssessed>;

  constructor({ threads, limitMs, helpers = 0, entry = engineEntry }: WorkerPoolPlan) {
    this.#pool = new ThreadPool({ threads, limitMs, entry, data: { helpers }, hear });
  }

  get state(): ThreadPool<Task, SchemeAssessed>["state"] {
    return this.#pool.state;
  }

  /** The answer, or why there is none; rejects only when the pool is closed first. */
  async assess(task: Task, options: TaskOptions = {}): Promise<Assessed> {
    const settled = await this.#pool.run(task, options);
    return settled.ok ? { ok: true, ...settled.answer } : settled;
  }

  close(): Promise<void> {
    return this.#pool.close();
  }
}

function hear(message: unknown): Heard<SchemeAssessed> {
  const said = FromThread.safeParse(message);
  if (!said.success) return null;
  if (said.data.kind === "step") return said.data;
  const { kind, ...answer } = said.data;
  return { kind, answer };
}
