import { Author, Disposition, NewCondition, type Digest, type Stamp } from "@cornerway/schema";
import { z } from "zod";
import type { Stamp as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

/** Stands for the item of a stamp on the revision as a whole. */
const whole = "";

export type FoundStamp = { stamp: Stamp; bodyDigest: Digest };

export async function insertStamp(tx: Connection, projectId: string, stamp: Stamp, bodyDigest: Digest): Promise<void> {
  await tx.stamp.create({ data: { projectId, ...stamp, elementId: stamp.elementId ?? whole, bodyDigest } });
}

export async function findStamp(db: Connection, projectId: string, id: string): Promise<FoundStamp | null> {
  const row = await db.stamp.findUnique({ where: { projectId_id: { projectId, id } } });
  return row === null ? null : { stamp: stampOf(row), bodyDigest: row.bodyDigest };
}

/** The stamp on a revision as a whole; null while there is none. */
export async function readStampOf(db: Connection, projectId: string, revision: string): Promise<Stamp | null> {
  const row = await db.stamp.findUnique({
    where: { projectId_revision_elementId: { projectId, revision, elementId: whole } },
  });
  return row === null ? null : stampOf(row);
}

/** Every stamp on a revision, on its items and as a whole. */
export async function readStampsOn(db: Connection, projectId: string, revision: string): Promise<Stamp[]> {
  const rows = await db.stamp.findMany({ where: { projectId, revision }, orderBy: { pressedAt: "asc" } });
  return rows.map(stampOf);
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
  ...(row.elementId === whole ? {} : { elementId: row.elementId }),
  ...(row.wording === null ? {} : { wording: row.wording }),
  ...(row.conditions === null ? {} : { conditions: z.array(NewCondition).parse(row.conditions) }),
  text: row.text,
  contentDigest: row.contentDigest,
  resultDigest: row.resultDigest,
  author: Author.parse(row.author),
  pressedAt: row.pressedAt.toISOString(),
});
