import type { ChangeRequest } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readRequestPremium } from "./read-premium.ts";

const most = 1_000;

/** Whether a request adds or takes away anything that is paid for; neither it nor its revision ever changes. */
const known = new Map<string, boolean>();

/** Those of the requests that cost something, or save it. */
export async function pricedRequests(
  db: Connection,
  projectId: string,
  requests: readonly ChangeRequest[],
): Promise<ReadonlySet<string>> {
  const priced = new Set<string>();
  for (const { id } of requests) {
    const key = `${projectId} ${id}`;
    const isPriced = known.get(key) ?? (await changesTakeOff(db, projectId, id));
    if (known.size >= most) known.clear();
    known.set(key, isPriced);
    if (isPriced) priced.add(id);
  }
  return priced;
}

async function changesTakeOff(db: Connection, projectId: string, requestId: string): Promise<boolean> {
  const read = await readRequestPremium(db, projectId, requestId);
  return read.ok && (read.value.lines.length > 0 || read.value.notPriced.length > 0);
}
