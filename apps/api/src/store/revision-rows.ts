import {
  Assessment,
  Author,
  Scheme,
  Verdict,
  type Digest,
  type Revision,
  type RevisionSummary,
} from "@cornerway/schema";
import type { Prisma } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";
import { readStampOf } from "./stamp-rows.ts";

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

/** The server's own answer to a revision. */
export type AssessmentRow = {
  letter: string;
  verdict: Verdict;
  engineVersion: string;
  doneAt: string;
} & (
  | { state: "done"; result: Assessment; resultDigest: Digest; why: null }
  | { state: "failed"; result: null; resultDigest: null; why: string }
);

export async function insertRevision(tx: Connection, projectId: string, row: RevisionRow): Promise<void> {
  await tx.revision.create({ data: { projectId, ...row } });
}

/** What tells one revision from another, without its scheme; the last one sent comes first. */
export function readRevisionHeads(db: Connection, projectId: string) {
  return db.revision.findMany({ where: { projectId }, omit: { scheme: true }, orderBy: { ordinal: "desc" } });
}

export type RevisionHead = Awaited<ReturnType<typeof readRevisionHeads>>[number];

export async function readRevisionSummaries(db: Connection, projectId: string): Promise<RevisionSummary[]> {
  const heads = await readRevisionHeads(db, projectId);
  return Promise.all(heads.map((head) => summaryOf(db, projectId, head)));
}

/** A revision with its scheme and, once it is there, the server's assessment; null when there is no such letter. */
export async function readRevision(db: Connection, projectId: string, letter: string): Promise<Revision | null> {
  const row = await db.revision.findUnique({ where: { projectId_letter: { projectId, letter } } });
  if (row === null) return null;
  const { scheme, ...head } = row;
  const assessment = await db.assessment.findUnique({ where: { projectId_letter: { projectId, letter } } });
  const result = assessment?.result ?? null;
  return {
    ...(await summaryOf(db, projectId, head)),
    scheme: Scheme.parse(scheme),
    result: result === null ? null : Assessment.parse(result),
  };
}

export async function summaryOf(db: Connection, projectId: string, head: RevisionHead): Promise<RevisionSummary> {
  const assessment = await db.assessment.findUnique({
    where: { projectId_letter: { projectId, letter: head.letter } },
    omit: { result: true },
  });
  return {
    letter: head.letter,
    contentDigest: head.contentDigest,
    resultDigest: assessment?.resultDigest ?? null,
    sentAt: head.sentAt.toISOString(),
    sentBy: Author.parse(head.author),
    remark: head.remark,
    verdict: Verdict.parse(assessment?.verdict ?? "not checked"),
    assessment: assessment === null ? "waiting" : assessment.state === "done" ? "done" : "failed",
    stamp: await readStampOf(db, projectId, head.letter),
  };
}

/** Revisions of all projects that the server has not assessed yet, the longest waiting first. */
export function readWaiting(db: Connection): Promise<{ projectId: string; letter: string }[]> {
  return db.$queryRaw`
    select r."project_id"::text as "projectId", r."letter" from "revision" r
    where not exists (select 1 from "assessment" a where a."project_id" = r."project_id" and a."letter" = r."letter")
    order by r."sent_at" limit 100`;
}

export async function isAssessed(db: Connection, projectId: string, letter: string): Promise<boolean> {
  return (await db.assessment.count({ where: { projectId, letter } })) > 0;
}

export async function insertAssessment(tx: Connection, projectId: string, row: AssessmentRow): Promise<void> {
  const { result, ...rest } = row;
  const data: Prisma.AssessmentUncheckedCreateInput = { projectId, ...rest };
  await tx.assessment.create({ data: result === null ? data : { ...data, result } });
}
