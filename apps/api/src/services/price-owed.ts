import { mayReadEntry, type ChangeRequest, type Role } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readRevisionHeads } from "../store/revision-rows.ts";
import { pricedRequests } from "./priced-requests.ts";
import { readDecisions } from "./read-decisions.ts";
import { readRequestPremium } from "./read-premium.ts";

/**
 * Requests that were taken in while their price waits for the owner's word: what was priced is what is drawn, it costs something or
 * saves it, and no word on it stands. None for those who read no decisions.
 */
export async function pricesOwed(
  db: Connection,
  { projectId, roles }: { projectId: string; roles: readonly Role[] },
  requests: readonly ChangeRequest[],
): Promise<ChangeRequest[]> {
  const takenIn = requests.filter(({ state }) => state === "taken in");
  if (takenIn.length === 0 || !mayReadEntry(roles, "decision made")) return [];
  const decided = new Set(
    (await readDecisions(db, projectId))
      .filter(({ latest, stale }) => latest && stale.length === 0)
      .map(({ decision: { requestId } }) => requestId),
  );
  const open: ChangeRequest[] = [];
  for (const request of takenIn)
    if (!decided.has(request.id) && (await isDrawnAsPriced(db, projectId, request))) open.push(request);
  const priced = await pricedRequests(db, projectId, open);
  return open.filter(({ id }) => priced.has(id));
}

/** The newest revision is the one it was made on, or holds the very drawing that was priced. */
async function isDrawnAsPriced(db: Connection, projectId: string, { id, revision }: ChangeRequest): Promise<boolean> {
  const [newest] = await readRevisionHeads(db, projectId);
  if (newest === undefined) return false;
  if (newest.letter === revision) return true;
  const read = await readRequestPremium(db, projectId, id);
  return read.ok && read.value.contentDigest === newest.contentDigest;
}
