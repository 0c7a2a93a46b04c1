import { randomUUID } from "node:crypto";
import {
  cautionLine,
  may,
  mayReadEntry,
  recordKinds,
  type RecordEntry,
  type RecordPayload,
  type SignedHead,
  type WebhookWord,
} from "@cornerway/schema";
import { z } from "zod";
import { tellTask } from "../queue/add-webhook-word.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { signHead } from "../record/sign-head.ts";
import { readSigner } from "../record/signing-key.ts";
import { stopTelling } from "../services/webhooks.ts";
import { readHeld } from "../store/membership-rows.ts";
import { readEntries } from "../store/record-rows.ts";
import { countFailure, findWebhook, forgetFailures, insertDelivery, type KeptWebhook } from "../store/webhook-rows.ts";
import { sendWord, type Sent } from "./send-word.ts";
import { sign, signatureHeader } from "./sign.ts";
import { unseal } from "./seal.ts";

const Payload = z.object({ webhookId: z.uuid(), entry: z.int() });

/** So many entries in a row that nothing could be told of, and it is stopped. */
export const mostFailures = 5;

/**
 * Tells a webhook of one entry, if whoever made it may see it now. What does not arrive is thrown, so that the queue tries
 * again later; told twice, it is the same word about the same entry.
 */
export const tellWebhook: Task = {
  name: tellTask,
  async run(payload, context) {
    const { webhookId, entry: number } = Payload.parse(payload);
    const { database, config, attempt, lastTry } = context;
    const webhook = await findWebhook(database.connection, webhookId);
    if (webhook === null || webhook.stoppedAt !== null) return;
    if (config.secretsKey === undefined)
      return stopTelling(database, webhook, "the service has no key to open its secret");
    const { roles } = await readHeld(database.connection, webhook.projectId, webhook.madeBy.id);
    if (!may(roles, "keep-webhooks"))
      return stopTelling(database, webhook, `${webhook.madeBy.name} keeps no webhooks here any more`);
    const kinds = recordKinds.filter((kind) => mayReadEntry(roles, kind));
    const [entry] = await readEntries(database.connection, webhook.projectId, { after: number - 1, limit: 1, kinds });
    if (entry?.number !== number) return;
    const secret = secretOf(config.secretsKey, webhook);
    if (secret === null)
      return stopTelling(
        database,
        webhook,
        "its secret was sealed under another key than the service has; make it anew",
      );
    const { key } = await readSigner(database.connection, config.secretsKey);
    const at = { project: webhook.projectId, number, head: entry.head, time: new Date().toISOString() };
    const word = wordOf(webhook, entry, signHead(at, key));
    const { sent, ms } = await send(webhook, word, secret, context);
    await insertDelivery(database.connection, { webhookId, id: randomUUID(), entry: number, attempt, ...sent, ms });
    if (sent.status !== null && sent.status >= 200 && sent.status < 300)
      return forgetFailures(database.connection, webhookId);
    if (!lastTry) throw new Error(`webhook ${webhookId}, entry ${number}: ${sent.error ?? sent.status}`);
    const failures = await countFailure(database.connection, webhookId);
    if (failures >= mostFailures) await stopTelling(database, webhook, `${failures} entries in a row did not arrive`);
  },
};

/** Null where the secret was sealed under another key, or altered. */
function secretOf(secretsKey: string, { id, sealedSecret }: KeptWebhook): string | null {
  try {
    return unseal(secretsKey, id, sealedSecret);
  } catch {
    return null; // AES-GCM says no more than that it does not open
  }
}

async function send(
  webhook: KeptWebhook,
  word: WebhookWord,
  secret: string,
  { config, signal }: TaskContext,
): Promise<{ sent: Sent; ms: number }> {
  const body = JSON.stringify(word);
  const begun = Date.now();
  const headers = { "content-type": "application/json", [signatureHeader]: sign(secret, body, begun) };
  const sent = await sendWord(
    new URL(webhook.url),
    { body, headers },
    { loopbackToo: config.webhooksToLoopback, signal },
  );
  return { sent, ms: Date.now() - begun };
}

function wordOf(
  { id, projectId }: KeptWebhook,
  { number, at, kind, actor, head, payload }: RecordEntry,
  signedHead: SignedHead,
): WebhookWord {
  return {
    webhook: id,
    project: projectId,
    entry: { number, at, kind, actor, head, revision: payload === null ? null : revisionOf(payload) },
    signedHead,
    read: `/api/projects/${projectId}/record?after=${number - 1}&limit=1`,
    caution: cautionLine,
  };
}

function revisionOf(payload: RecordPayload): string | null {
  if ("letter" in payload) return payload.letter;
  if (payload.kind === "stamp pressed") return payload.stamp.revision;
  if (payload.kind === "request made") return payload.request.revision;
  return payload.kind === "note written" ? payload.note.revision : null;
}
