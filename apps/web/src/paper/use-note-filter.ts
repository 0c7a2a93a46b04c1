import { useMemo, useState } from "react";
import { everyNote, isLookedFor, looksForAny } from "../notes/note-filter.ts";
import type { NotesOnViews } from "./use-notes-on-views.ts";

/** What is looked for among the notes, and what is left of them, with their leaders; numbers stay as they are. */
export function useNoteFilter({ notes, anchors }: Pick<NotesOnViews, "notes" | "anchors">) {
  const [filter, setFilter] = useState(everyNote);
  const left = useMemo(() => {
    if (looksForAny(filter)) return { notes, anchors };
    const lookedFor = notes.filter((note) => isLookedFor(note, filter));
    const numbers = new Set(lookedFor.map(({ number }) => number));
    return { notes: lookedFor, anchors: anchors.filter(({ number }) => numbers.has(number)) };
  }, [notes, anchors, filter]);
  return { filter, setFilter, left };
}

export type FilteredNotes = ReturnType<typeof useNoteFilter>;
