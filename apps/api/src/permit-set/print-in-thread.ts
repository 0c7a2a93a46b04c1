import type { Worker } from "node:worker_threads";
import { Digest } from "@cornerway/schema";
import { z } from "zod";
import { startThread } from "../assessment/start-thread.ts";
import type { SetSource } from "./set-source.ts";

/** Makes and writes one set, then ends. */
const entry = new URL(import.meta.url.endsWith(".ts") ? "./print-thread.ts" : "./print-thread.js", import.meta.url);

/** What a printing thread says. */
const ToPrint = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("pages"), done: z.int(), of: z.int() }),
  z.strictObject({ kind: z.literal("refused"), why: z.string() }),
  z.strictObject({
    kind: z.literal("done"),
    setDigest: Digest,
    pages: z.int(),
    pdf: z.custom<Uint8Array<ArrayBuffer>>((value) => value instanceof Uint8Array),
  }),
]);
export type ToPrint = z.infer<typeof ToPrint>;

export type Printed = Exclude<ToPrint, { kind: "pages" }>;

export interface PrintOptions {
  signal: AbortSignal;
  onPages: (done: number, of: number) => void;
}

/** Prints a set in a thread of its own, which an abort ends. Rejects with the reason of the abort, or what went wrong. */
export async function printInThread(source: SetSource, options: PrintOptions): Promise<Printed> {
  const worker = startThread(entry);
  try {
    return await heardFrom(worker, source, options);
  } finally {
    await worker.terminate();
  }
}

const heardFrom = (worker: Worker, source: SetSource, { signal, onPages }: PrintOptions): Promise<Printed> =>
  new Promise((settle, fail) => {
    const stop = () => fail(new Error("stopped"));
    if (signal.aborted) return stop();
    signal.addEventListener("abort", stop);
    worker.on("error", fail);
    worker.on("exit", () => fail(new Error("the printing thread ended")));
    worker.on("message", (message: unknown) => {
      const said = ToPrint.safeParse(message);
      if (!said.success) return fail(new Error("what the printing thread said is not whole"));
      if (said.data.kind === "pages") return onPages(said.data.done, said.data.of);
      settle(said.data);
    });
    worker.postMessage(source);
  });
