import { parentPort } from "node:worker_threads";
import { premium } from "@cornerway/engine";
import { CostBook, Mark, Scheme } from "@cornerway/schema";
import { z } from "zod";

const Task = z.strictObject({ scheme: Scheme, book: CostBook, marks: z.array(Mark).nullable() });

// One task at a time; what the engine throws ends this thread, and the pool answers for it.
parentPort?.on("message", (message: unknown) => {
  const { scheme, book, marks } = Task.parse(message);
  parentPort?.postMessage(premium(scheme, book, marks ?? undefined));
});
