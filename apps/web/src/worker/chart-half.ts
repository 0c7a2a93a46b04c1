import type { ChartRequest, HalfWord } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { HalfQuestion } from "./chart-messages.ts";

/**
 * Starts the thread that traces half of a chart, where there is a core for it. One that does not start or breaks is gone: whoever
 * hears so traces all of it.
 */
export function startHalf(scheme: Scheme, request: ChartRequest, hear: (word: HalfWord) => void): void {
  const gone = () => hear({ kind: "gone" });
  if (navigator.hardwareConcurrency < 2) return gone();
  try {
    const worker = new Worker(new URL("./chart-half.worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<HalfWord>) => {
      hear(data);
      if (data.kind === "told") worker.terminate();
    });
    worker.addEventListener("error", gone);
    worker.postMessage({ scheme, request } satisfies HalfQuestion);
  } catch {
    gone(); // a browser that starts no worker from a worker
  }
}
