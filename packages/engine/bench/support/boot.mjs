// Starts a thread from TypeScript source: `--import tsx` does not reach into worker threads on Node 20.
import { workerData } from "node:worker_threads";
import { register } from "tsx/esm/api";

register();
await import(workerData.entry);
