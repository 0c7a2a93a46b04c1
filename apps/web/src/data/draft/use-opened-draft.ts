import { useEffect, useState } from "react";
import type { DraftStore } from "./draft-store.ts";
import { openDraftStore } from "./open-draft-store.ts";

type Opened = { store: DraftStore; error: null } | { store: null; error: unknown } | null;

/** The draft of a project, open as long as this is shown; null until it is. */
export function useOpenedDraft(
  personId: string,
  projectId: string,
  wanted: boolean,
): { opened: Opened; again: () => void } {
  const [opened, setOpened] = useState<Opened>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    if (!wanted) return undefined;
    let gone = false;
    let close: () => void = () => undefined;
    openDraftStore(personId, projectId).then(
      (open) => {
        if (gone) return open.close();
        close = open.close;
        setOpened({ store: open.store, error: null });
      },
      (error: unknown) => {
        if (!gone) setOpened({ store: null, error });
      },
    );
    return () => {
      gone = true;
      close();
      setOpened(null);
    };
  }, [personId, projectId, wanted, turn]);
  return { opened, again: () => setTurn(turn + 1) };
}
