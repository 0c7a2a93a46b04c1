import { Author, type Digest, type Revision, type RevisionSummary, type Scheme } from "@cornerway/schema";
import { readResult, readLatestRun, type LatestRun } from "./assessment-rows.ts";
import type { Connection } from "./connection.ts";
import { readStampOf } from "./stamp-rows.ts";
import { storedScheme } from "./stored-scheme.ts";

export interface RevisionRow {
  id: string;
  ordinal: number;
  letter: string;
  draftNumber: number;
  contentDigest: Digest;
  scheme: Scheme;
  containerCount: number;
  remark: string | null;
  author: Author;
  sentAt: string;
  bodyDigest: Digest;
}

export async function insertRevision(tx: Connection, projectId: string, row: RevisionRow): Promise<void> {
  await tx.revision.create({ data: { projectId, ...row } });
}

/** What tells one revision from another, without its scheme; the last one sent comes first. */
export function readRevisionHeads(db: Connection, projectId: string) {
  return db.revision.findMany({ where: { projectId }, omit: { scheme: true }, orderBy: { ordinal: "desc" } });
}

/** One of them by its letter; null when there is none. */
export const findRevisionHead = (db: Connection, projectId: string, letter: string): Promise<RevisionHead | null> =>
  db.revision.findUnique({ where: { projectId_letter: { projectId, letter } }, omit: { scheme: true } });

export type RevisionHead = Awaited<ReturnType<typeof readRevisionHeads>>[number];

/** Revisions without their schemes, latest first: those sent before one of them, at most `limit`. */
export async function readRevisionSummaries(
  db: Connection,
  projectId: string,
  { before, limit }: { before: number | undefined; limit: number },
): Promise<RevisionSummary[]> {
  const where = { projectId, ...(before === undefined ? {} : { ordinal: { lt: before } }) };
  const heads = await db.revision.findMany({
    where,
    omit: { scheme: true },
    orderBy: { ordinal: "desc" },
    take: limit,
  });
  return Promise.all(heads.map((head) => summaryOf(db, projectId, head)));
}

/** A revision with its scheme and, once it is there, the server's assessment; null when there is no such letter. */
export async function readRevision(db: Connection, projectId: string, letter: string): Promise<Revision | null> {
  const row = await db.revision.findUnique({ where: { projectId_letter: { projectId, letter } } });
  if (row === null) return null;
  const { scheme, ...head } = row;
  const { latest, result } = await readResult(db, projectId, letter);
  return { ...(await summaryOf(db, projectId, head, latest)), scheme: storedScheme(scheme), result };
}

export async function summaryOf(
  db: Connection,
  projectId: string,
  head: RevisionHead,
  known?: LatestRun,
): Promise<RevisionSummary> {
  const { assessment, verdict, resultDigest } = known ?? (await readLatestRun(db, projectId, head.letter));
  return {
    letter: head.letter,
    contentDigest: head.contentDigest,
    resultDigest,
    sentAt: head.sentAt.toISOString(),
    sentBy: Author.parse(head.author),
    remark: head.remark,
    verdict,
    assessment,
    stamp: await readStampOf(db, projectId, head.letter),
  };
}
