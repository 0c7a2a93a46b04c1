import type { NewNote, Note, Scheme } from "@cornerway/schema";
import { elementById, may } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { readDraft } from "../store/draft-rows.ts";
import { findNote, insertNote } from "../store/note-rows.ts";
import { readRevision } from "../store/revision-rows.ts";
import { actOf } from "./act-of.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { authorOf, type Part } from "./part.ts";

/** Pins what someone writes to an element of a revision, or of the draft. */
export async function writeNote(database: Database, sender: Part, body: NewNote): Promise<Outcome<Note>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "write-note", async (tx, part) => {
    const earlier = await findNote(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.note) : refuse("id-reused");
    const refused = await refusalOf(tx, part, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "write-note");
    const noteAt = (at: string): Note => ({ ...body, author, writtenAt: at, settledAt: null });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "note written", note: noteAt(at) }));
    const note = noteAt(entry.at);
    await insertNote(tx, projectId, note, { entry: entry.number, bodyDigest });
    return done(note);
  });
}

async function refusalOf(tx: Connection, part: Part, body: NewNote): Promise<Outcome<never> | undefined> {
  const { projectId } = part;
  if (body.answers !== null && (await findNote(tx, projectId, body.answers)) === null)
    return refuseField("body-invalid", "/answers", "there is no such note in this project");
  if (body.revision === null) {
    if (!may(part.roles, "read-draft")) return refuse("role-refused", { detail: "your role does not see the draft" });
    return elementRefusal((await readDraft(tx, projectId)).scheme, body.elementId);
  }
  const revision = await readRevision(tx, projectId, body.revision);
  if (revision === null) return refuseField("body-invalid", "/revision", "there is no such revision");
  const marks = revision.result?.marks;
  if (body.markId !== null && marks !== undefined && !marks.some(({ id }) => id === body.markId))
    return refuseField("element-unknown", "/markId", `revision ${revision.letter} has no such mark`);
  return elementRefusal(revision.scheme, body.elementId);
}

function elementRefusal(scheme: Scheme, id: string): Outcome<never> | undefined {
  return elementById(scheme, id) === undefined
    ? refuseField("element-unknown", "/elementId", `there is no ${id}`)
    : undefined;
}
