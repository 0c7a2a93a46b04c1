import type { Scheme } from "@cornerway/schema";
import { useCallback, useEffect, useRef } from "react";
import { StrengthRun, type StrengthTold } from "./strength-run.ts";
import { startThread, type LiveStrength } from "./use-strength.ts";

/** A thread for the forces of a scheme that was judged elsewhere; it starts with the first question. */
export function useForcesThread(): Pick<LiveStrength, "forcesOf"> {
  const run = useRef<StrengthRun | null>(null);
  useEffect(() => {
    const opened = new StrengthRun(startThread, judgesNothing);
    run.current = opened;
    return () => opened.stop();
  }, []);
  const forcesOf = useCallback(
    (of: Scheme, runs: readonly string[]) => run.current?.forcesOf(of, runs) ?? Promise.resolve(null),
    [],
  );
  return { forcesOf };
}

const judgesNothing: StrengthTold = {
  ...{ judged: () => undefined, progress: () => undefined },
  ...{ glance: () => undefined, known: () => undefined },
};
