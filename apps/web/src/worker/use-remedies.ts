import type { CostBook, Scheme } from "@cornerway/schema";
import { useEffect, useMemo, useRef, useState } from "react";
import type { RemedyWord } from "./remedy-messages.ts";
import { RemedyRun, type RemediesSoFar } from "./remedy-run.ts";

export interface LiveRemedies {
  so: RemediesSoFar | null;
  ask: (scheme: Scheme, markId: string, book: CostBook) => void;
  stop: () => void;
  close: () => void;
}

/** The ways to settle a mark, from a Web Worker of its own, as they are found. */
export function useRemedies(): LiveRemedies {
  const [so, setSo] = useState<RemediesSoFar | null>(null);
  const run = useRef<RemedyRun | null>(null);

  useEffect(() => {
    const opened = new RemedyRun(startThread, setSo);
    run.current = opened;
    return () => opened.end();
  }, []);

  return useMemo(
    () => ({
      so,
      ask: (scheme, markId, book) => run.current?.ask(scheme, markId, book),
      stop: () => run.current?.stop(),
      close: () => run.current?.close(),
    }),
    [so],
  );
}

function startThread() {
  const worker = new Worker(new URL("./remedy.worker.ts", import.meta.url), { type: "module" });
  return {
    post: (question: unknown) => worker.postMessage(question),
    listen: (hear: (word: RemedyWord) => void) =>
      worker.addEventListener("message", ({ data }: MessageEvent<RemedyWord>) => hear(data)),
    end: () => worker.terminate(),
  };
}
