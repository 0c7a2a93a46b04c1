import type { Note } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Database } from "../store/database.ts";
import { findNote, insertSettlement } from "../store/note-rows.ts";
import { actOf } from "./act-of.ts";
import { authorOf, type Part } from "./part.ts";

/** Settles a note. Settling one that is settled changes nothing and answers the same. */
export async function settleNote(database: Database, sender: Part, noteId: string): Promise<Outcome<Note>> {
  const { projectId } = sender;
  return actOf(database, sender, "settle-note", async (tx, part) => {
    const found = await findNote(tx, projectId, noteId);
    if (found === null) return refuse("not-found");
    if (found.note.settledAt !== null) return done(found.note);
    const author = authorOf(part, "settle-note");
    const { at } = await append(tx, projectId, author, () => ({ kind: "note settled", noteId }));
    await insertSettlement(tx, projectId, { noteId, author, settledAt: at });
    return done({ ...found.note, settledAt: at });
  });
}
