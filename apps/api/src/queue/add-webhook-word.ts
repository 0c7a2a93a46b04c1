import type { Connection } from "../store/connection.ts";
import { readListening } from "../store/webhook-rows.ts";
import { addJob } from "./add-job.ts";

export const tellTask = "tell a webhook";

/** Tries for one entry: with pauses that grow by e from 2.7 s, the last comes about 50 minutes after the first. */
const tries = 8;

/** Has every webhook of a project told of an entry, once the act that wrote it commits. */
export async function addWebhookWord(tx: Connection, projectId: string, entry: number): Promise<void> {
  for (const webhookId of await readListening(tx, projectId))
    await addJob(tx, tellTask, { webhookId, entry }, { key: `webhook ${webhookId} ${entry}`, tries });
}
