import type { KnownRun } from "@cornerway/engine";
import type { CheckWorking, Scheme } from "@cornerway/schema";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { atOnce, type Hearing } from "./hearing.ts";
import { runsOfPage } from "./known-runs.ts";
import type { ForcesAnswer, StrengthWord } from "./strength-messages.ts";
import { StrengthRun, type Glance, type Judged } from "./strength-run.ts";

/** How long the hand rests before a run is worth its time, ms. */
const restMs = 700;

export interface LiveStrength {
  /** The last answer, perhaps of an earlier scheme. */
  judged: Judged | null;
  /** True where the answer is of the scheme shown. */
  stands: boolean;
  /** How many sets of assumptions are solved of a run under way; null before it begins. */
  progress: { done: number; of: number } | null;
  /** What the vectors that governed before say of the scheme shown, until its answer comes. */
  glance: Glance | null;
  workingOf: (id: string) => Promise<CheckWorking | null>;
  /** The forces of the first of these runs that the scheme has; null where they are not to be had now. */
  forcesOf: (scheme: Scheme, runs: readonly string[]) => Promise<ForcesAnswer | { why: string } | null>;
}

/**
 * Strength of the scheme shown, from a Web Worker of its own, once the hand rests; the next change ends what is under way.
 * `when` hears what the thread says.
 */
export function useStrength(scheme: Scheme, inHand = false, when: Hearing = atOnce): LiveStrength {
  const [judged, setJudged] = useState<Judged | null>(null);
  const [progress, setProgress] = useState<{ scheme: Scheme; done: number; of: number } | null>(null);
  const [glance, setGlance] = useState<Glance | null>(null);
  const run = useRef<StrengthRun | null>(null);

  useEffect(() => {
    const told = {
      ...{ judged: setJudged, glance: setGlance },
      progress: (asked: Scheme, done: number, of: number) => setProgress({ scheme: asked, done, of }),
      known: (known: KnownRun) => runsOfPage.keep(known),
    };
    const opened = new StrengthRun(() => startThread(when), told);
    run.current = opened;
    return () => opened.stop();
  }, [when]);

  useEffect(() => {
    run.current?.leave(scheme);
    if (inHand || scheme.containers.length === 0) return undefined;
    const timer = setTimeout(() => run.current?.ask(scheme), restMs);
    return () => clearTimeout(timer);
  }, [scheme, inHand]);

  const workingOf = useCallback((id: string) => run.current?.workingOf(id) ?? Promise.resolve(null), []);
  const forcesOf = useCallback(
    (of: Scheme, runs: readonly string[]) => run.current?.forcesOf(of, runs) ?? Promise.resolve(null),
    [],
  );
  const glimpsed = glance?.scheme === scheme ? glance : null;
  const underway = progress?.scheme === scheme ? progress : null;
  const stands = judged?.scheme === scheme;
  return useMemo(
    () => ({ judged, stands, progress: underway, glance: glimpsed, workingOf, forcesOf }),
    [judged, stands, underway, glimpsed, workingOf, forcesOf],
  );
}

/** A thread that judges schemes and tells their forces. */
export function startThread(when: Hearing = atOnce) {
  const worker = new Worker(new URL("./strength.worker.ts", import.meta.url), { type: "module" });
  return {
    post: (question: unknown) => worker.postMessage(question),
    listen: (hear: (word: StrengthWord) => void) =>
      worker.addEventListener("message", (event: MessageEvent<StrengthWord>) => when(() => hear(event.data))),
    end: () => worker.terminate(),
  };
}
