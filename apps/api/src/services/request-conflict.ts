import { touchedByAll, type ChangeRequest } from "@cornerway/schema";
import type { Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import type { DraftRow } from "../store/draft-rows.ts";
import { readRevisionHeads } from "../store/revision-rows.ts";
import { draftConflict } from "./draft-conflict.ts";

/** Whether what a request reads or writes changed in the draft since the revision it was made on: then a conflict. */
export async function requestConflict(
  tx: Connection,
  projectId: string,
  { draft, request }: { draft: DraftRow; request: ChangeRequest },
): Promise<Outcome<never> | undefined> {
  const heads = await readRevisionHeads(tx, projectId);
  const revision = heads.find(({ letter }) => letter === request.revision);
  if (revision === undefined) throw new Error(`requestConflict: request ${request.id} names no revision`);
  const { reads, writes } = touchedByAll(draft.scheme, request.operations);
  const keys = [...new Set([...writes, ...reads])];
  const { operations: mine } = request;
  return draftConflict(tx, projectId, { after: revision.draftNumber, keys, draftNumber: draft.number, mine });
}
