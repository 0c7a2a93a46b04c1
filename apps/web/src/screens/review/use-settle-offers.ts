import { may } from "@cornerway/schema";
import type { Note } from "@cornerway/schema";
import { useSettleNote } from "../../data/note.ts";
import type { UnplacedNote } from "../../notes/placed-note.ts";
import { useRoom } from "../../room/room-context.ts";

/** Notes with the quiet way to settle what people wrote on them, for those who may. */
export function useSettleOffers(notes: readonly UnplacedNote[], written: readonly Note[]): UnplacedNote[] {
  const { project } = useRoom();
  const settle = useSettleNote(project.id);
  if (!may(project.roles, "settle-note")) return [...notes];
  return notes.map((note) => {
    const open = note.comments.find((comment) => !comment.settled);
    const first = written.find(({ id }) => id === open?.id);
    if (first === undefined) return note;
    return { ...note, quietOffer: { label: "Mark settled", onPress: () => settle.mutate(first.answers ?? first.id) } };
  });
}
