import { Worker } from "node:worker_threads";

/** Runs the engine for one task after the other. */
export const engineEntry = new URL(
  import.meta.url.endsWith(".ts") ? "./assess-worker.ts" : "./assess-worker.js",
  import.meta.url,
);

/** A thread that runs `entry` with `data` as its `workerData`, from source through a boot file of its own. */
export function startThread(entry: URL, data: Readonly<Record<string, unknown>> = {}): Worker {
  if (!entry.pathname.endsWith(".ts")) return new Worker(entry, { workerData: data });
  const boot = new URL("./ts-worker.mjs", import.meta.url);
  return new Worker(boot, { workerData: { ...data, entry: entry.href }, execArgv: ["--conditions=development"] });
}
