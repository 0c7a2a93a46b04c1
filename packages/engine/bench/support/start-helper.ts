import { Worker } from "node:worker_threads";
import { ShareElsewhere, type ToldBack } from "../../src/strength/share-elsewhere.ts";

/** A thread that helps with full runs, from source; it does not hold the process. */
export function startHelper(): ShareElsewhere {
  const worker = new Worker(new URL("./boot.mjs", import.meta.url), {
    workerData: { entry: new URL("./helper-thread.ts", import.meta.url).href },
    execArgv: ["--conditions=development"],
  });
  worker.unref();
  const helper = new ShareElsewhere((posted) => worker.postMessage(posted));
  worker.on("message", (back: ToldBack) => helper.hear(back));
  worker.on("error", (error) => helper.end(error));
  return helper;
}
