import { ShareElsewhere, type ToldBack } from "@cornerway/engine";
import { startThread } from "./start-thread.ts";

const entry = new URL(import.meta.url.endsWith(".ts") ? "./help-worker.ts" : "./help-worker.js", import.meta.url);

/** Threads that share the strength runs of this one. One that ends fails what is asked of it, and all asked after. */
export const startHelpers = (count: number, of: URL = entry): ShareElsewhere[] =>
  Array.from({ length: count }, () => {
    const worker = startThread(of);
    const helper = new ShareElsewhere((posted) => worker.postMessage(posted));
    worker.on("message", (back: ToldBack) => helper.hear(back));
    worker.on("error", (error) => helper.end(error));
    worker.on("exit", () => helper.end(new Error("a helping thread ended")));
    return helper;
  });
