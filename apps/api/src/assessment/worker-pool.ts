import { Worker } from "node:worker_threads";
import { Assessment, Digest, type Scheme } from "@cornerway/schema";
import { z } from "zod";
import type { Assessed } from "../services/record-assessment.ts";

export interface Task {
  scheme: Scheme;
  contentDigest: Digest;
}

type Waiting = { task: Task; settle: (assessed: Assessed) => void; fail: (error: Error) => void };

const Result = z.strictObject({ assessment: Assessment, resultDigest: Digest });

/** Runs the engine in threads of its own, each task within a time limit; a thread that passes it is ended. */
export class WorkerPool {
  readonly #limitMs: number;
  readonly #most: number;
  readonly #entry: URL;
  readonly #idle: Worker[] = [];
  readonly #all = new Set<Worker>();
  readonly #queue: Waiting[] = [];
  #closed = false;

  constructor({ threads, limitMs, entry = engineEntry }: { threads: number; limitMs: number; entry?: URL }) {
    this.#most = threads;
    this.#limitMs = limitMs;
    this.#entry = entry;
  }

  /** The answer, or why there is none; rejects only when the pool is closed first. */
  assess(task: Task): Promise<Assessed> {
    return new Promise((settle, fail) => {
      if (this.#closed) return fail(new Error("the pool is closed"));
      this.#queue.push({ task, settle, fail });
      this.#next();
    });
  }

  async close(): Promise<void> {
    this.#closed = true;
    for (const { fail } of this.#queue.splice(0)) fail(new Error("the pool is closed"));
    await Promise.all([...this.#all].map((worker) => worker.terminate()));
  }

  #next(): void {
    if (this.#queue.length === 0) return;
    const worker = this.#idle.pop() ?? (this.#all.size < this.#most ? this.#start() : undefined);
    const waiting = worker && this.#queue.shift();
    if (worker !== undefined && waiting !== undefined) this.#run(worker, waiting);
  }

  #start(): Worker {
    const worker = startWorker(this.#entry);
    this.#all.add(worker);
    worker.once("exit", () => this.#all.delete(worker));
    return worker;
  }

  #run(worker: Worker, { task, settle, fail }: Waiting): void {
    const finish = (assessed: Assessed, reusable: boolean) => {
      clearTimeout(timer);
      for (const event of ["message", "error", "exit"]) worker.removeAllListeners(event);
      if (reusable) this.#idle.push(worker);
      else this.#discard(worker);
      settle(assessed);
      this.#next();
    };
    const limit = () => finish({ ok: false, why: `no answer within ${this.#limitMs / 1000} s` }, false);
    const timer = setTimeout(limit, this.#limitMs);
    worker.once("message", (message: unknown) => finish({ ok: true, ...Result.parse(message) }, true));
    worker.once("error", (error) => finish({ ok: false, why: `the engine stopped: ${error.message}` }, false));
    worker.once("exit", () => {
      clearTimeout(timer); // it would hold the process for the rest of the limit
      if (this.#closed) return fail(new Error("the pool is closed"));
      finish({ ok: false, why: "the engine's thread ended" }, false);
    });
    worker.postMessage(task);
  }

  #discard(worker: Worker): void {
    this.#all.delete(worker);
    void worker.terminate();
  }
}

const engineEntry = new URL(
  import.meta.url.endsWith(".ts") ? "./assess-worker.ts" : "./assess-worker.js",
  import.meta.url,
);

function startWorker(entry: URL): Worker {
  if (!entry.pathname.endsWith(".ts")) return new Worker(entry);
  const boot = new URL("./ts-worker.mjs", import.meta.url);
  return new Worker(boot, { workerData: { entry: entry.href }, execArgv: ["--conditions=development"] });
}
