import { stoodOnBy } from "@cornerway/engine";
import { useCallback, useRef } from "react";
import type { Assessed } from "../../worker/latest-assessment.ts";

/** Tells what stands on things of the drawing, by the answer of the engine last heard; nothing before there is one. */
export function useStanding() {
  const last = useRef<Assessed | null>(null);
  const standing = useCallback((ids: readonly string[]) => {
    const assessment = last.current?.assessment;
    return assessment == null ? [] : stoodOnBy(assessment, ids).map(({ id }) => id);
  }, []);
  const hear = useCallback((assessed: Assessed | null) => {
    last.current = assessed;
  }, []);
  return { standing, hear };
}
