import { Author, type Digest, type PermitSetRun, setStates, Units } from "@cornerway/schema";
import { z } from "zod";
import type { Connection } from "./connection.ts";

export interface SetKey {
  projectId: string;
  id: string;
}

/** A set as it was asked for. */
export interface NewSet {
  id: string;
  letter: string;
  units: string;
  upTo: number;
  askedBy: Author;
  askedAt: string;
  bodyDigest: Digest;
}

/** What came of it. */
export type SetAnswer =
  | { state: "done"; setDigest: Digest; pages: number; pdf: Uint8Array<ArrayBuffer> }
  | { state: "refused" | "failed" | "stopped"; why: string };

const withoutPdf = { omit: { pdf: true } } as const;
const State = z.enum(setStates);

export async function insertSet(tx: Connection, projectId: string, set: NewSet): Promise<void> {
  await tx.permitSet.create({ data: { projectId, ...set } });
}

export async function findSet(
  db: Connection,
  { projectId, id }: SetKey,
): Promise<{ run: PermitSetRun; bodyDigest: Digest } | null> {
  const row = await db.permitSet.findUnique({ where: { projectId_id: { projectId, id } }, ...withoutPdf });
  return row === null ? null : { run: runOf(row, await bytesOf(db, [row.id])), bodyDigest: row.bodyDigest };
}

/** The latest sets of a project, at most so many, the newest first. */
export async function readSets(db: Connection, projectId: string, most: number): Promise<PermitSetRun[]> {
  const rows = await db.permitSet.findMany({
    where: { projectId },
    orderBy: [{ askedAt: "desc" }, { id: "desc" }],
    take: most,
    ...withoutPdf,
  });
  const bytes = await bytesOf(
    db,
    rows.map(({ id }) => id),
  );
  return rows.map((row) => runOf(row, bytes));
}

/** The printed file; null while there is none. */
export async function readSetPdf(db: Connection, { projectId, id }: SetKey): Promise<Buffer | null> {
  const row = await db.permitSet.findUnique({ where: { projectId_id: { projectId, id } }, select: { pdf: true } });
  return row?.pdf == null ? null : Buffer.from(row.pdf);
}

/** Notes how many pages are written; false when it is waited for no more. */
export async function notePages(db: Connection, { projectId, id }: SetKey, done: number, of: number): Promise<boolean> {
  const noted = await db.$executeRaw`
    update "permit_set" set "pages_done" = ${done}, "pages_of" = ${of}, "started_at" = coalesce("started_at", now())
    where "project_id" = ${projectId}::uuid and "id" = ${id}::uuid and "state" = 'waiting'`;
  return noted > 0;
}

/** Writes what came of a set, once; false when it is waited for no more. */
export async function answerSet(tx: Connection, { projectId, id }: SetKey, answer: SetAnswer): Promise<boolean> {
  const { state } = answer;
  const said =
    answer.state === "done"
      ? { setDigest: answer.setDigest, pdf: answer.pdf, pagesDone: answer.pages, pagesOf: answer.pages }
      : { why: answer.why };
  const data = { state, doneAt: new Date(), ...said };
  return (await tx.permitSet.updateMany({ where: { projectId, id, state: "waiting" }, data })).count > 0;
}

/** Sets that wait, of all projects. */
export const readWaitingSets = (db: Connection): Promise<SetKey[]> =>
  db.permitSet.findMany({ where: { state: "waiting" }, select: { projectId: true, id: true }, take: 500 });

async function bytesOf(db: Connection, ids: readonly string[]): Promise<Map<string, number>> {
  const rows = await db.$queryRaw<{ id: string; bytes: number | null }[]>`
    select "id"::text as "id", length("pdf") as "bytes" from "permit_set" where "id"::text = any(${[...ids]})`;
  return new Map(rows.flatMap(({ id, bytes }) => (bytes === null ? [] : [[id, bytes] as const])));
}

interface SetRow {
  id: string;
  letter: string;
  units: string;
  upTo: number;
  askedBy: unknown;
  askedAt: Date;
  state: string;
  startedAt: Date | null;
  pagesDone: number;
  pagesOf: number;
  doneAt: Date | null;
  why: string | null;
  setDigest: string | null;
}

function runOf(row: SetRow, bytes: ReadonlyMap<string, number>): PermitSetRun {
  const { id, letter, upTo, why, setDigest, pagesDone, pagesOf, startedAt } = row;
  const state = State.parse(row.state);
  return {
    ...{ id, letter, upTo, why, setDigest, state },
    units: Units.parse(row.units),
    pages: { done: pagesDone, of: pagesOf },
    leftMs: state === "waiting" ? leftMs(startedAt, pagesDone, pagesOf) : null,
    askedBy: Author.parse(row.askedBy),
    askedAt: row.askedAt.toISOString(),
    doneAt: row.doneAt?.toISOString() ?? null,
    bytes: bytes.get(id) ?? null,
  };
}

function leftMs(startedAt: Date | null, done: number, of: number): number | null {
  if (startedAt === null || done === 0) return null;
  return Math.round((Math.max(0, Date.now() - startedAt.getTime()) / done) * (of - done));
}
