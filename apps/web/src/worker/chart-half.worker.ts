import { otherHalfOfChart, type HalfWord } from "@cornerway/engine";
import type { HalfQuestion } from "./chart-messages.ts";

/** Half of a chart on a thread of its own, a column at a time; it ends with the thread that traces the other half. */
addEventListener("message", ({ data: { scheme, request } }: MessageEvent<HalfQuestion>) => {
  for (const word of otherHalfOfChart(scheme, request)) postMessage(word satisfies HalfWord);
});
