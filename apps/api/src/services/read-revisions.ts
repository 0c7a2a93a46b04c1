import type { Revision, RevisionSummary } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
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
