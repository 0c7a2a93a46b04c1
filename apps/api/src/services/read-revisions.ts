import type { Digest, Revision, RevisionSummary } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readLatestRun } from "../store/assessment-rows.ts";
import { readReportText, readWorkingText } from "../store/proof-rows.ts";
import { findRevisionHead, readRevision as readRevisionRow, readRevisionSummaries } from "../store/revision-rows.ts";
import { pageOf, type Page } from "./page.ts";

/** The revisions of a project without their schemes, latest first; null when there is none to come after. */
export async function readRevisions(
  db: Connection,
  projectId: string,
  { after, limit }: { after?: string | undefined; limit: number },
): Promise<Page<RevisionSummary> | null> {
  const from = after === undefined ? undefined : await findRevisionHead(db, projectId, after);
  if (from === null) return null;
  const read = await readRevisionSummaries(db, projectId, { before: from?.ordinal, limit: limit + 1 });
  return pageOf(read, limit, ({ letter }) => letter);
}

/** One revision with its scheme and, once it is there, the server's assessment. */
export async function readRevision(db: Connection, projectId: string, letter: string): Promise<Outcome<Revision>> {
  const revision = await readRevisionRow(db, projectId, letter);
  return revision === null ? refuse("not-found") : done(revision);
}

/** Something of a revision's proof as JSON text, and the digest of the result it belongs to. */
export interface ProofPart {
  resultDigest: Digest;
  text: string;
}

/** What stands behind a revision's verdicts of strength. Not found until its assessment is done, or where strength was not judged. */
export const readStrengthReport = (db: Connection, projectId: string, letter: string): Promise<Outcome<ProofPart>> =>
  readProof(db, projectId, letter, (attempt) => readReportText(db, { projectId, letter, attempt }));

/** One working of it, by its name. */
export const readWorking = (
  db: Connection,
  projectId: string,
  letter: string,
  id: string,
): Promise<Outcome<ProofPart>> =>
  readProof(db, projectId, letter, (attempt) => readWorkingText(db, { projectId, letter, attempt }, id));

async function readProof(
  db: Connection,
  projectId: string,
  letter: string,
  read: (attempt: number) => Promise<string | null>,
): Promise<Outcome<ProofPart>> {
  if ((await findRevisionHead(db, projectId, letter)) === null) return refuse("not-found");
  const { attempt, resultDigest } = await readLatestRun(db, projectId, letter);
  const text = resultDigest === null ? null : await read(attempt);
  return text === null || resultDigest === null ? refuse("not-found") : done({ resultDigest, text });
}
