import { parentPort } from "node:worker_threads";
import { emptyScheme } from "@cornerway/schema";
import { assessScheme } from "../../src/assessment/assess-scheme.ts";
import { unit } from "../support/sample.ts";

const digest = "0".repeat(64);

// A thread that answers one task well and then ends by itself, as one that runs out of memory while idle would.
parentPort?.on("message", () => {
  parentPort?.postMessage({ kind: "answer", ...assessScheme({ ...emptyScheme, containers: [unit(1)] }, digest) });
  setTimeout(() => process.exit(1), 20);
});
