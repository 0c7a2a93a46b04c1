import { applyOperations } from "@cornerway/schema";
import type { Operation, Scheme } from "@cornerway/schema";
import { useMemo, useState } from "react";

/** A change request being drawn on a revision: proposed operations beside the scheme, never in it. */
export function useRequestDraft(revision: Scheme) {
  const [drawn, setDrawn] = useState<Operation[][] | null>(null);
  const [text, setText] = useState("");
  const operations = useMemo(() => (drawn ?? []).flat(), [drawn]);
  const proposed = useMemo(() => {
    const applied = applyOperations(revision, operations);
    return applied.ok ? applied.scheme : revision;
  }, [revision, operations]);

  return {
    open: drawn !== null,
    operations,
    proposed,
    text,
    setText,
    begin: () => setDrawn([]),
    /** Lays one act on the proposal; false when the scheme could not take it. */
    draw: (act: Operation[]): boolean => {
      if (!applyOperations(proposed, act).ok) return false;
      setDrawn((before) => [...(before ?? []), act]);
      return true;
    },
    takeBack: () => setDrawn((before) => (before ?? []).slice(0, -1)),
    lay: () => {
      setDrawn(null);
      setText("");
    },
  };
}

export type RequestDraft = ReturnType<typeof useRequestDraft>;
