import type { Digest, Draft } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { readDraft as readDraftRow } from "../store/draft-rows.ts";
import { knownSchemeText } from "../store/known-schemes.ts";
import { readRevisionHeads } from "../store/revision-rows.ts";

/** The working copy, and how many moves it is ahead of the last revision. */
export async function readDraft(db: Connection, projectId: string): Promise<Draft> {
  const draft = await readDraftRow(db, projectId);
  const [latest] = await readRevisionHeads(db, projectId);
  return { ...draft, movesSinceRevision: draft.number - (latest?.draftNumber ?? 0) };
}

/** A `Draft` whose scheme is written out when it is sent, and not at all to someone who holds it. */
export interface DraftToSend {
  number: number;
  contentDigest: Digest;
  movesSinceRevision: number;
  /** The whole draft as JSON. */
  text: () => string;
}

/** The same for sending: of a scheme that is known here nothing is read but its digest. */
export async function readDraftToSend({ reads, connection }: Database, projectId: string): Promise<DraftToSend> {
  const head = await reads.draftHead(projectId);
  if (head === null || knownSchemeText(head.contentDigest) === undefined) {
    const draft = await readDraft(connection, projectId);
    return { ...draft, text: () => JSON.stringify(draft) };
  }
  const { number, contentDigest, sentNumber } = head;
  const scheme = knownSchemeText(contentDigest);
  const movesSinceRevision = number - sentNumber;
  const text = () =>
    `{"number":${number},"contentDigest":"${contentDigest}","scheme":${scheme},"movesSinceRevision":${movesSinceRevision}}`;
  return { number, contentDigest, movesSinceRevision, text };
}
