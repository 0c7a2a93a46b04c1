import { Author, type Digest, type Note } from "@cornerway/schema";
import type { Note as Row, NoteSettlement } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

export type FoundNote = { note: Note; bodyDigest: Digest };

export async function insertNote(
  tx: Connection,
  projectId: string,
  note: Note,
  { entry, bodyDigest }: { entry: number; bodyDigest: Digest },
): Promise<void> {
  const { settledAt: _open, ...data } = note;
  await tx.note.create({ data: { projectId, ...data, entry, bodyDigest } });
}

export async function insertSettlement(
  tx: Connection,
  projectId: string,
  row: { noteId: string; author: Author; settledAt: string },
): Promise<void> {
  await tx.noteSettlement.create({ data: { projectId, ...row } });
}

export async function findNote(db: Connection, projectId: string, id: string): Promise<FoundNote | null> {
  const row = await db.note.findUnique({ where: { projectId_id: { projectId, id } }, include: { settlement: true } });
  return row === null ? null : { note: noteOf(row), bodyDigest: row.bodyDigest };
}

/** What was written on marks of one revision. */
export async function readNotesOnMarks(db: Connection, projectId: string, revision: string): Promise<Note[]> {
  const where = { projectId, revision, markId: { not: null } };
  const rows = await db.note.findMany({ where, include: { settlement: true }, orderBy: { entry: "asc" } });
  return rows.map(noteOf);
}

/** The latest notes of a project, at most `limit`, in the order they were written. */
export async function readLatestNotes(db: Connection, projectId: string, limit: number): Promise<Note[]> {
  const rows = await db.note.findMany({
    where: { projectId },
    include: { settlement: true },
    orderBy: { entry: "desc" },
    take: limit,
  });
  return rows.toReversed().map(noteOf);
}

/** Notes in the order they were written: those after one of them, at most `limit`; null when there is no such one. */
export async function readNotesAfter(
  db: Connection,
  projectId: string,
  { after, limit }: { after: string | undefined; limit: number },
): Promise<Note[] | null> {
  const from =
    after === undefined ? undefined : await db.note.findUnique({ where: { projectId_id: { projectId, id: after } } });
  if (from === null) return null;
  const rows = await db.note.findMany({
    where: { projectId, ...(from === undefined ? {} : { entry: { gt: from.entry } }) },
    include: { settlement: true },
    orderBy: { entry: "asc" },
    take: limit,
  });
  return rows.map(noteOf);
}

const noteOf = (row: Row & { settlement: NoteSettlement | null }): Note => ({
  id: row.id,
  elementId: row.elementId,
  markId: row.markId,
  revision: row.revision,
  answers: row.answers,
  text: row.text,
  author: Author.parse(row.author),
  writtenAt: row.writtenAt.toISOString(),
  settledAt: row.settlement?.settledAt.toISOString() ?? null,
});
