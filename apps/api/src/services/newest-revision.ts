import type { RevisionSummary } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readRevisionHeads, summaryOf } from "../store/revision-rows.ts";

/** What a judgement is bound to: a revision and the two digests on the screen of whoever judges. */
export interface Bound {
  revision: string;
  contentDigest: string;
  resultDigest: string;
}

/**
 * The revision that a judgement is bound to: the newest, assessed, and with the digests it carries. Refused otherwise, so
 * that nobody judges what is no longer there or what they cannot see.
 */
export async function newestRevision(
  tx: Connection,
  projectId: string,
  bound: Bound,
): Promise<Outcome<RevisionSummary>> {
  const heads = await readRevisionHeads(tx, projectId);
  const head = heads.find(({ letter }) => letter === bound.revision);
  if (head === undefined) return refuseField("body-invalid", "/revision", "there is no such revision");
  const newest = heads[0];
  if (newest !== undefined && newest !== head)
    return refuse("revision-superseded", { detail: `revision ${newest.letter} is newer` });
  const revision = await summaryOf(tx, projectId, head);
  if (revision.resultDigest === null)
    return refuse("assessment-pending", { detail: `the assessment is ${revision.assessment}` });
  if (revision.contentDigest !== bound.contentDigest)
    return refuseField("digest-mismatch", "/contentDigest", "not that revision's");
  if (revision.resultDigest !== bound.resultDigest)
    return refuseField("digest-mismatch", "/resultDigest", "not that revision's");
  return done(revision);
}
