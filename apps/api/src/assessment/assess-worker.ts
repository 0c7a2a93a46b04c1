import { parentPort } from "node:worker_threads";
import { Digest, Scheme } from "@cornerway/schema";
import { z } from "zod";
import { assessScheme } from "./assess-scheme.ts";

const Task = z.strictObject({ scheme: Scheme, contentDigest: Digest });

// One task at a time; what the engine throws ends this thread, and the pool answers for it.
parentPort?.on("message", (message: unknown) => {
  const { scheme, contentDigest } = Task.parse(message);
  parentPort?.postMessage(assessScheme(scheme, contentDigest));
});
