import { project, toScreen } from "../drawing/view-transform.ts";
import { elementPlace } from "../notes/element-place.ts";
import type { PlacedNote } from "../notes/placed-note.ts";
import { isPlain } from "./lens.ts";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import type { LookedAt } from "./use-lenses.ts";

/** Going from note to note and from thing to thing: what is gone to is brought into sight where one looks more closely. */
export function useNoteWalk(props: PaperSheetProps, notes: readonly PlacedNote[], looking: LookedAt) {
  const { eye, hand, scheme } = props;
  const chosen = notes.find(({ id }) => id === props.chosenNoteId);
  const show = (id: string) => {
    const { views } = looking;
    const at = views === null || isPlain(looking.lenses.elevation) ? null : elementPlace(scheme, id);
    if (views !== null && at !== null) looking.bring(toScreen(views.elevation.transform, project(eye.side, at)));
  };
  const choose = (note: PlacedNote | undefined) => {
    if (note === undefined) return;
    props.onNote(note);
    show(note.elementId);
  };
  return {
    chosenNumber: chosen?.number ?? null,
    chooseNumber: (number: number) => choose(notes.find((each) => each.number === number)),
    step: (by: 1 | -1) => {
      const at = chosen === undefined ? (by === 1 ? -1 : 0) : notes.indexOf(chosen);
      choose(notes.at((at + by + notes.length) % Math.max(1, notes.length)));
    },
    /** What the focus is on is chosen, and shown where one goes by keyboard. */
    focus: (id: string) => {
      hand.focused(id);
      if (document.activeElement?.matches(":focus-visible") === true) show(id);
    },
  };
}

export type NoteWalk = ReturnType<typeof useNoteWalk>;
