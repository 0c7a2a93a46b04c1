import { parentPort, workerData } from "node:worker_threads";
import { leastShared, type ShareElsewhere } from "@cornerway/engine";
import { Digest, Scheme } from "@cornerway/schema";
import { z } from "zod";
import { assessSchemeShared } from "./assess-scheme.ts";
import type { FromThread } from "./from-thread.ts";
import { startHelpers } from "./start-helpers.ts";

const Task = z.strictObject({ scheme: Scheme, contentDigest: Digest });

const tell = (message: z.input<typeof FromThread>) => parentPort?.postMessage(message);

const Data = z.object({ helpers: z.int().min(0).default(0) }).nullish();
const count = Data.parse(workerData)?.helpers ?? 0;
let helpers: readonly ShareElsewhere[] | undefined;

/** Started for the first scheme that is worth sharing; they stay with this thread. */
function helpersFor({ containers }: Scheme): readonly ShareElsewhere[] {
  if (containers.length < leastShared) return [];
  helpers ??= startHelpers(count);
  return helpers;
}

// One task at a time; what the engine throws, here or in a helper, ends this thread with its helpers: the pool answers for it.
parentPort?.on("message", (message: unknown) => void assess(Task.parse(message)));

async function assess({ scheme, contentDigest }: z.infer<typeof Task>): Promise<void> {
  const onStep = (done: number) => tell({ kind: "step", done });
  tell({ kind: "answer", ...(await assessSchemeShared(scheme, contentDigest, helpersFor(scheme), onStep)) });
}
