import type { Draft } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readDraft as readDraftRow } from "../store/draft-rows.ts";
import { readRevisionHeads } from "../store/revision-rows.ts";

/** The working copy, and how many moves it is ahead of the last revision. */
export async function readDraft(db: Connection, projectId: string): Promise<Draft> {
  const draft = await readDraftRow(db, projectId);
  const [latest] = await readRevisionHeads(db, projectId);
  return { ...draft, movesSinceRevision: draft.number - (latest?.draftNumber ?? 0) };
}
