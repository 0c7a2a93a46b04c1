import type { Revision, RevisionSummary } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readRevision as readRevisionRow, readRevisionSummaries } from "../store/revision-rows.ts";

/** The revisions of a project without their schemes, latest first. */
export const readRevisions = (db: Connection, projectId: string): Promise<RevisionSummary[]> =>
  readRevisionSummaries(db, projectId);

/** One revision with its scheme and, once it is there, the server's assessment. */
export async function readRevision(db: Connection, projectId: string, letter: string): Promise<Outcome<Revision>> {
  const revision = await readRevisionRow(db, projectId, letter);
  return revision === null ? refuse("not-found") : done(revision);
}
