import { type Author, ChangeRequest, type Digest } from "@cornerway/schema";
import type { ChangeRequest as Row, RequestAnswer } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

export interface FoundRequest {
  request: ChangeRequest;
  bodyDigest: Digest;
  /** How it was answered, to tell a repeated answer from another one; null while it is open. */
  answer: { bodyDigest: Digest; actId: string | null } | null;
}

export interface AnswerRow {
  requestId: string;
  state: "taken in" | "declined";
  actId: string | null;
  reason: string | null;
  author: Author;
  answeredAt: string;
  bodyDigest: Digest;
}

export async function insertRequest(
  tx: Connection,
  projectId: string,
  request: ChangeRequest,
  bodyDigest: Digest,
): Promise<void> {
  const { state: _open, answer: _none, ...data } = request;
  await tx.changeRequest.create({ data: { projectId, ...data, bodyDigest } });
}

export async function insertAnswer(tx: Connection, projectId: string, row: AnswerRow): Promise<void> {
  await tx.requestAnswer.create({ data: { projectId, ...row } });
}

/** How many requests a project has: the next one's number less one. Only under the project's row lock. */
export const countRequests = (tx: Connection, projectId: string): Promise<number> =>
  tx.changeRequest.count({ where: { projectId } });

/** How many of them neither were taken in nor declined. */
export const countOpenRequests = (tx: Connection, projectId: string): Promise<number> =>
  tx.changeRequest.count({ where: { projectId, answer: null } });

export async function findRequest(db: Connection, projectId: string, id: string): Promise<FoundRequest | null> {
  const row = await db.changeRequest.findUnique({
    where: { projectId_id: { projectId, id } },
    include: { answer: true },
  });
  return row === null ? null : { request: requestOf(row), bodyDigest: row.bodyDigest, answer: row.answer };
}

/** The request that became this act on the draft; null where the act took none in. */
export async function findRequestTakenInBy(
  db: Connection,
  projectId: string,
  actId: string,
): Promise<ChangeRequest | null> {
  const row = await db.changeRequest.findFirst({ where: { projectId, answer: { actId } }, include: { answer: true } });
  return row === null ? null : requestOf(row);
}

export async function readRequests(db: Connection, projectId: string): Promise<ChangeRequest[]> {
  const rows = await db.changeRequest.findMany({
    where: { projectId },
    include: { answer: true },
    orderBy: { number: "asc" },
  });
  return rows.map(requestOf);
}

/** The latest requests of a project, at most `limit`, in the order of their numbers. */
export async function readLatestRequests(db: Connection, projectId: string, limit: number): Promise<ChangeRequest[]> {
  const rows = await db.changeRequest.findMany({
    where: { projectId },
    include: { answer: true },
    orderBy: { number: "desc" },
    take: limit,
  });
  return rows.toReversed().map(requestOf);
}

/** Requests in the order of their numbers: those after a number, at most `limit`. */
export async function readRequestsAfter(
  db: Connection,
  projectId: string,
  { after, limit }: { after: number; limit: number },
): Promise<ChangeRequest[]> {
  const rows = await db.changeRequest.findMany({
    where: { projectId, number: { gt: after } },
    include: { answer: true },
    orderBy: { number: "asc" },
    take: limit,
  });
  return rows.map(requestOf);
}

const requestOf = ({ answer, ...row }: Row & { answer: RequestAnswer | null }): ChangeRequest =>
  ChangeRequest.parse({
    id: row.id,
    number: row.number,
    revision: row.revision,
    contentDigest: row.contentDigest,
    text: row.text,
    operations: row.operations,
    author: row.author,
    madeAt: row.madeAt.toISOString(),
    state: answer?.state ?? "open",
    answer: answer && { by: answer.author, at: answer.answeredAt.toISOString(), reason: answer.reason },
  });
