import { Operation, Scheme, type Digest } from "@cornerway/schema";
import { z } from "zod";
import type { Connection } from "./connection.ts";
import { keepScheme, knownScheme } from "./known-schemes.ts";

export interface DraftRow {
  number: number;
  contentDigest: Digest;
  scheme: Scheme;
}

export interface DraftActRow {
  id: string;
  number: number;
  entry: number;
  personId: string;
  personName: string;
  bodyDigest: Digest;
  contentDigest: Digest;
  undoes: string | null;
  writes: string[];
  operations: Operation[];
  inverse: Operation[];
}

const Operations = z.array(Operation);

export async function readDraft(db: Connection, projectId: string): Promise<DraftRow> {
  const head = await db.draft.findUniqueOrThrow({ where: { projectId }, omit: { scheme: true } });
  const known = knownScheme(head.contentDigest);
  if (known !== undefined) return { number: head.number, contentDigest: head.contentDigest, scheme: known };
  const { number, contentDigest, scheme } = await db.draft.findUniqueOrThrow({ where: { projectId } });
  return { number, contentDigest, scheme: keepScheme(contentDigest, Scheme.parse(scheme)) };
}

export async function updateDraft(tx: Connection, projectId: string, draft: DraftRow): Promise<void> {
  const { number, contentDigest, scheme } = draft;
  await tx.$executeRaw`
    update "draft" set "number" = ${number}, "content_digest" = ${contentDigest}, "scheme" = ${JSON.stringify(scheme)}::jsonb
    where "project_id" = ${projectId}::uuid`;
  keepScheme(draft.contentDigest, draft.scheme);
}

export async function findDraftAct(db: Connection, projectId: string, id: string): Promise<DraftActRow | null> {
  const row = await db.draftAct.findUnique({ where: { projectId_id: { projectId, id } } });
  return row === null ? null : parsed(row);
}

/** Acts after a draft number that wrote any of the keys, latest first. */
export async function readActsThatWrote(
  db: Connection,
  projectId: string,
  { after, keys }: { after: number; keys: string[] },
): Promise<DraftActRow[]> {
  const rows = await db.draftAct.findMany({
    where: { projectId, number: { gt: after }, writes: { hasSome: keys } },
    orderBy: { number: "desc" },
  });
  return rows.map(parsed);
}

/** Acts after a draft number, in order, at most `limit`. */
export async function readActsAfter(
  db: Connection,
  projectId: string,
  { after, limit }: { after: number; limit: number },
): Promise<DraftActRow[]> {
  const rows = await db.draftAct.findMany({
    where: { projectId, number: { gt: after } },
    orderBy: { number: "asc" },
    take: limit,
  });
  return rows.map(parsed);
}

export async function insertDraftAct(tx: Connection, projectId: string, act: DraftActRow): Promise<void> {
  await tx.draftAct.create({ data: { projectId, ...act } });
}

const parsed = <R extends { operations: unknown; inverse: unknown }>(row: R) => ({
  ...row,
  operations: Operations.parse(row.operations),
  inverse: Operations.parse(row.inverse),
});
