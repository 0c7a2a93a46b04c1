import { Author, Disposition, type Digest, type Stamp } from "@cornerway/schema";
import type { Stamp as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

export type FoundStamp = { stamp: Stamp; bodyDigest: Digest };

export async function insertStamp(tx: Connection, projectId: string, stamp: Stamp, bodyDigest: Digest): Promise<void> {
  await tx.stamp.create({ data: { projectId, ...stamp, bodyDigest } });
}

export async function findStamp(db: Connection, projectId: string, id: string): Promise<FoundStamp | null> {
  const row = await db.stamp.findUnique({ where: { projectId_id: { projectId, id } } });
  return row === null ? null : { stamp: stampOf(row), bodyDigest: row.bodyDigest };
}

/** The stamp on a revision; null while there is none. */
export async function readStampOf(db: Connection, projectId: string, revision: string): Promise<Stamp | null> {
  const row = await db.stamp.findUnique({ where: { projectId_revision: { projectId, revision } } });
  return row === null ? null : stampOf(row);
}

/** The latest stamps of a project, at most `limit`, in the order they were pressed. */
export async function readLatestStamps(db: Connection, projectId: string, limit: number): Promise<Stamp[]> {
  const rows = await db.stamp.findMany({ where: { projectId }, orderBy: { pressedAt: "desc" }, take: limit });
  return rows.toReversed().map(stampOf);
}

const stampOf = (row: Row): Stamp => ({
  id: row.id,
  revision: row.revision,
  disposition: Disposition.parse(row.disposition),
  text: row.text,
  contentDigest: row.contentDigest,
  resultDigest: row.resultDigest,
  author: Author.parse(row.author),
  pressedAt: row.pressedAt.toISOString(),
});
