import { applyOperations } from "@cornerway/schema";
import type { Operation, Scheme } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { newUuid } from "../../tools/new-uuid.ts";

/** A change request being drawn on a revision: proposed operations beside the scheme, never in it. */
export function useRequestDraft(revision: Scheme) {
  const [drawn, setDrawn] = useState<Operation[][] | null>(null);
  const [text, setText] = useState("");
  // One proposal, one id: pressed again after an answer that was lost, it is the same request.
  const [id, renewId] = useState(newUuid);
  const change = (drawn: (before: Operation[][]) => Operation[][] | null) => {
    setDrawn((before) => drawn(before ?? []));
    renewId(newUuid());
  };
  const operations = useMemo(() => (drawn ?? []).flat(), [drawn]);
  const proposed = useMemo(() => {
    const applied = applyOperations(revision, operations);
    return applied.ok ? applied.scheme : revision;
  }, [revision, operations]);

  return {
    id,
    open: drawn !== null,
    operations,
    proposed,
    text,
    setText: (next: string) => {
      setText(next);
      renewId(newUuid());
    },
    begin: () => change(() => []),
    /** Lays one act on the proposal; false when the scheme could not take it. */
    draw: (act: Operation[]): boolean => {
      if (!applyOperations(proposed, act).ok) return false;
      change((before) => [...before, act]);
      return true;
    },
    takeBack: () => change((before) => before.slice(0, -1)),
    lay: () => {
      change(() => null);
      setText("");
    },
  };
}

export type RequestDraft = ReturnType<typeof useRequestDraft>;
