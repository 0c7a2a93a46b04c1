import { parentPort } from "node:worker_threads";
import { Digest, Scheme } from "@cornerway/schema";
import { z } from "zod";
import { assessScheme } from "./assess-scheme.ts";
import type { FromThread } from "./from-thread.ts";

const Task = z.strictObject({ scheme: Scheme, contentDigest: Digest });

const tell = (message: z.input<typeof FromThread>) => parentPort?.postMessage(message);

// One task at a time; what the engine throws ends this thread, and the pool answers for it.
parentPort?.on("message", (message: unknown) => {
  const { scheme, contentDigest } = Task.parse(message);
  tell({ kind: "answer", ...assessScheme(scheme, contentDigest, (done) => tell({ kind: "step", done })) });
});
