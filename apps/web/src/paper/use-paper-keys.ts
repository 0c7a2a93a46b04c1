import type { Scheme } from "@cornerway/schema";
import { useKeys } from "../keys/use-keys.ts";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import { lensKeys } from "./use-lenses.ts";
import type { NoteWalk } from "./use-note-walk.ts";
import type { SeenPaper } from "./use-seen-paper.ts";

/** The keys by which one looks at the drawing, and goes through its notes. */
export function usePaperKeys(
  { eye, hand, scheme, isometric = true }: PaperSheetProps,
  { looking, firstSection }: SeenPaper,
  { step }: NoteWalk,
): void {
  useKeys({
    n: () => step(1),
    "Shift+n": () => step(-1),
    v: () => eye.turn(1),
    "Shift+v": () => eye.turn(-1),
    u: () => eye.unfold(eye.unfoldedId === null ? unitOf(scheme, hand.chosenId) : null),
    d: () => eye.showDetails(!eye.detailed),
    x: () => {
      if (isometric) eye.cutAlong(eye.section === null ? firstSection() : null);
    },
    o: () => eye.stepPicture(1, 0),
    "Shift+o": () => eye.stepPicture(-1, 0),
    i: () => eye.stepPicture(0, 1),
    "Shift+i": () => eye.stepPicture(0, -1),
    ...lensKeys(looking),
  });
}

/** The unit that is chosen, or in which the chosen opening is cut; null for anything else. */
const unitOf = (scheme: Scheme, id: string | null): string | null =>
  scheme.containers.find((unit) => unit.id === id)?.id ??
  scheme.openings.find((opening) => opening.id === id)?.containerId ??
  null;
