import type { Worker } from "node:worker_threads";
import { startThread } from "./start-thread.ts";

/** What a thread said: how far it is, its answer, or null where that is not whole. */
export type Heard<Answer> = { kind: "step"; done: number } | { kind: "answer"; answer: Answer } | null;

/** The answer, or why there is none. */
export type Settled<Answer> = { ok: true; answer: Answer } | { ok: false; why: string };

export interface ThreadPoolPlan<Answer> {
  threads: number;
  limitMs: number;
  entry: URL;
  /** What each thread is started with. */
  data?: Readonly<Record<string, unknown>>;
  /** Reads what a thread said. */
  hear: (message: unknown) => Heard<Answer>;
  /** False where threads that idle let the process end; true unless said otherwise. */
  holdsProcess?: boolean;
}

export interface TaskOptions {
  /** Ends the thread that works on the task. */
  signal?: AbortSignal;
  onStep?: (done: number) => void;
}

interface Waiting<Task, Answer> extends TaskOptions {
  task: Task;
  settle: (settled: Settled<Answer>) => void;
  fail: (error: Error) => void;
}

/** Runs the engine in threads of its own, each task within a time limit; a thread that passes it, or is told to stop, is ended. */
export class ThreadPool<Task, Answer> {
  readonly #plan: ThreadPoolPlan<Answer>;
  readonly #idle: Worker[] = [];
  readonly #all = new Set<Worker>();
  readonly #queue: Waiting<Task, Answer>[] = [];
  #closed = false;

  constructor(plan: ThreadPoolPlan<Answer>) {
    this.#plan = plan;
  }

  /** How many tasks run, how many wait for a thread, and how many threads there are. */
  get state(): { running: number; waiting: number; threads: number } {
    const threads = this.#all.size;
    return { running: threads - this.#idle.length, waiting: this.#queue.length, threads };
  }

  /** The answer, or why there is none; rejects only when the pool is closed first. */
  run(task: Task, options: TaskOptions = {}): Promise<Settled<Answer>> {
    return new Promise((settle, fail) => {
      if (this.#closed) return fail(new Error("the pool is closed"));
      this.#queue.push({ task, settle, fail, ...options });
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
    const worker = this.#idle.pop() ?? (this.#all.size < this.#plan.threads ? this.#start() : undefined);
    const waiting = worker && this.#queue.shift();
    if (worker !== undefined && waiting !== undefined) this.#run(worker, waiting);
  }

  #start(): Worker {
    const worker = startThread(this.#plan.entry, this.#plan.data);
    if (this.#plan.holdsProcess === false) worker.unref();
    this.#all.add(worker);
    worker.on("error", () => undefined); // its end follows; a task that runs listens for the reason itself
    worker.once("exit", () => this.#forget(worker));
    return worker;
  }

  #run(worker: Worker, { task, settle, fail, signal, onStep }: Waiting<Task, Answer>): void {
    const { limitMs, hear } = this.#plan;
    const finish = (settled: Settled<Answer>, reusable: boolean) => {
      release();
      if (reusable) this.#idle.push(worker);
      else this.#discard(worker);
      settle(settled);
      this.#next();
    };
    const fails = (why: string) => finish({ ok: false, why }, false);
    const stop = () => fails("stopped");
    const onMessage = (message: unknown) => {
      const said = hear(message);
      if (said === null) return fails("the engine's answer is not whole");
      if (said.kind === "step") return onStep?.(said.done);
      finish({ ok: true, answer: said.answer }, true);
    };
    const onError = (error: Error) => fails(`the engine stopped: ${error.message}`);
    const onExit = () => {
      if (!this.#closed) return fails("the engine's thread ended");
      release();
      fail(new Error("the pool is closed"));
    };
    const timer = setTimeout(() => fails(`no answer within ${limitMs / 1000} s`), limitMs);
    const release = () => {
      clearTimeout(timer); // it would hold the process for the rest of the limit
      signal?.removeEventListener("abort", stop);
      worker.off("message", onMessage).off("error", onError).off("exit", onExit);
    };
    worker.on("message", onMessage).on("error", onError).on("exit", onExit);
    signal?.addEventListener("abort", stop);
    if (signal?.aborted) return stop();
    worker.postMessage(task);
  }

  #forget(worker: Worker): void {
    this.#all.delete(worker);
    const at = this.#idle.indexOf(worker);
    if (at >= 0) this.#idle.splice(at, 1);
  }

  #discard(worker: Worker): void {
    this.#forget(worker);
    void worker.terminate();
  }
}
