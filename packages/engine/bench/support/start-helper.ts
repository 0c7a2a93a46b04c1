import { Worker } from "node:worker_threads";
import { ShareElsewhere, type ToldBack } from "../../src/strength/share-elsewhere.ts";

export interface BenchHelper {
  readonly helper: ShareElsewhere;
  /** Begins again with nothing at hand but code that ran before. */
  readonly forget: () => void;
  /** Ends the thread, which holds the process until then. */
  readonly end: () => Promise<unknown>;
}

/** A thread that helps with full runs, from source. */
export function startHelper(): BenchHelper {
  const worker = new Worker(new URL("./boot.mjs", import.meta.url), {
    workerData: { entry: new URL("./helper-thread.ts", import.meta.url).href },
    execArgv: ["--conditions=development"],
  });
  const helper = new ShareElsewhere((posted) => worker.postMessage(posted));
  worker.on("message", (back: ToldBack) => helper.hear(back));
  worker.on("error", (error) => helper.end(error));
  return { helper, forget: () => worker.postMessage("forget"), end: () => worker.terminate() };
}
