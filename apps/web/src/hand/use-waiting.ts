import { useCallback, useEffect, useRef } from "react";
import { flushSync } from "react-dom";

/**
 * What is done before one is ready for it, kept in order and done again then, each on what the one before it has made.
 * `doBy` is told who does it, at every drawing.
 */
export function useWaiting<Doer>(ready: boolean) {
  const doer = useRef<Doer | null>(null);
  const waiting = useRef<((doer: Doer) => void)[]>([]);
  const doAll = useCallback(() => {
    for (const again of waiting.current.splice(0))
      flushSync(() => {
        if (doer.current !== null) again(doer.current);
      });
  }, []);
  useEffect(() => {
    if (ready) queueMicrotask(doAll); // not within an effect, where React draws nothing at once
  }, [ready, doAll]);
  return {
    doBy: useCallback((latest: Doer): void => {
      doer.current = latest;
    }, []),
    wait: useCallback((again: (doer: Doer) => void): void => void waiting.current.push(again), []),
    isWaiting: useCallback(() => waiting.current.length > 0, []),
  };
}
