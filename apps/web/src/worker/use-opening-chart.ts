import type { ChartRequest } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useEffect, useMemo, useRef, useState } from "react";
import type { ChartPlace, ChartWord } from "./chart-messages.ts";
import { ChartRun, type ChartSoFar } from "./chart-run.ts";

/** How long the hand rests before a chart is worth its time, ms. */
const restMs = 300;

export interface LiveChart {
  so: ChartSoFar | null;
  stop: () => void;
  again: () => void;
  confirm: (place: ChartPlace) => void;
}

/** The opening chart of one side, from a Web Worker of its own; null asks nothing. */
export function useOpeningChart(scheme: Scheme, request: ChartRequest | null): LiveChart {
  const [so, setSo] = useState<ChartSoFar | null>(null);
  const [turn, setTurn] = useState(0);
  const run = useRef<ChartRun | null>(null);

  useEffect(() => {
    const opened = new ChartRun(startThread, setSo);
    run.current = opened;
    return () => opened.end();
  }, []);

  useEffect(() => {
    if (request === null) return undefined;
    const timer = setTimeout(() => run.current?.ask(scheme, request), restMs);
    return () => clearTimeout(timer);
  }, [scheme, request, turn]);

  return useMemo(
    () => ({
      so: request === null ? null : so,
      stop: () => run.current?.stop(),
      again: () => setTurn((last) => last + 1),
      confirm: (place: ChartPlace) => run.current?.confirm(place),
    }),
    [so, request],
  );
}

function startThread() {
  const worker = new Worker(new URL("./chart.worker.ts", import.meta.url), { type: "module" });
  return {
    post: (question: unknown) => worker.postMessage(question),
    listen: (hear: (word: ChartWord) => void) =>
      worker.addEventListener("message", ({ data }: MessageEvent<ChartWord>) => hear(data)),
    end: () => worker.terminate(),
  };
}
