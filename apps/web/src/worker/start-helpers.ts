import { mostHelpers, ShareElsewhere, type ToldBack } from "@cornerway/engine";

/** One for each core beside that of the thread they help and that of the page, and one where there are but two. */
export const helpersOn = (cores: number): number => Math.min(mostHelpers, Math.max(cores - 2, cores > 1 ? 1 : 0));

/** Threads that share full runs, so many at most; one that cannot start or breaks is gone, and whoever asked it hears so. */
export const startHelpers = (most = mostHelpers): ShareElsewhere[] =>
  Array.from({ length: Math.min(most, helpersOn(navigator.hardwareConcurrency)) }, () => {
    const worker = new Worker(new URL("./help.worker.ts", import.meta.url), { type: "module" });
    const helper = new ShareElsewhere((posted) => worker.postMessage(posted));
    worker.addEventListener("message", ({ data }: MessageEvent<ToldBack>) => helper.hear(data));
    worker.addEventListener("error", ({ message }) =>
      helper.end(new Error(message || "a helping thread did not start")),
    );
    return helper;
  });
