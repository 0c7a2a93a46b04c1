import { randomUUID } from "node:crypto";
import { serviceActor, WebhookMade, type NewWebhook, type Webhook, type WebhookDelivery } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import type { Repeatable } from "../store/repeatable-rows.ts";
import {
  countWebhooks,
  deleteWebhook,
  findWebhook,
  insertWebhook,
  readDeliveries,
  resumeWebhook,
  stopWebhook,
  type KeptWebhook,
} from "../store/webhook-rows.ts";
import { addressFault } from "../webhooks/address-fault.ts";
import { seal } from "../webhooks/seal.ts";
import { actOf } from "./act-of.ts";
import { once } from "./once.ts";
import { pageOf, type Page } from "./page.ts";
import { authorOf, type Part } from "./part.ts";
import { newSecret } from "./secret.ts";

const mostWebhooks = 10;

export interface WebhookSettings {
  /** Under which their secrets are sealed; undefined where none was given, and then no webhook is made. */
  secretsKey: string | undefined;
  webhooksToLoopback: boolean;
}

/** Makes a webhook. Its secret is in this answer and, sealed, in its row. */
export async function makeWebhook(
  database: Database,
  sender: Part,
  { url }: NewWebhook,
  { settings, repeatable }: { settings: WebhookSettings; repeatable: Repeatable | null },
): Promise<Outcome<WebhookMade>> {
  const { secretsKey, webhooksToLoopback } = settings;
  if (secretsKey === undefined) return refuse("webhooks-off");
  const address = new URL(url);
  const fault = addressFault(address, { loopbackToo: webhooksToLoopback });
  if (fault !== undefined) return refuseField("address-refused", "/url", fault);
  const { projectId, person } = sender;
  return actOf(database, sender, "keep-webhooks", (tx, part) =>
    once(tx, repeatable, { shape: WebhookMade, kept: (made) => ({ ...made, secret: null }) }, async () => {
      if ((await countWebhooks(tx, projectId)) >= mostWebhooks) return refuse("too-many-kept");
      const [id, secret] = [randomUUID(), newSecret()];
      const row = { id, projectId, personId: person.id, url: address.href, sealedSecret: seal(secretsKey, id, secret) };
      const webhook = await insertWebhook(tx, row);
      await append(tx, projectId, authorOf(part, "keep-webhooks"), () => ({
        kind: "webhook made",
        host: address.host,
      }));
      return done({ ...webhook, secret });
    }),
  );
}

/** Takes a webhook away with the log of what it was told. */
export function endWebhook(database: Database, sender: Part, id: string): Promise<Outcome<void>> {
  return actOf(database, sender, "keep-webhooks", async (tx, part) => {
    const webhook = await webhookIn(tx, part, id);
    if (webhook === null) return refuse("not-found");
    await deleteWebhook(tx, id);
    const { host } = new URL(webhook.url);
    await append(tx, part.projectId, authorOf(part, "keep-webhooks"), () => ({ kind: "webhook ended", host }));
    return done(undefined);
  });
}

/** Sets a webhook going again that was stopped; entries written meanwhile are not told. */
export function goOnTelling(database: Database, sender: Part, id: string): Promise<Outcome<Webhook>> {
  return actOf(database, sender, "keep-webhooks", async (tx, part) => {
    const webhook = await webhookIn(tx, part, id);
    if (webhook === null) return refuse("not-found");
    await resumeWebhook(tx, id);
    const { projectId: _project, sealedSecret: _sealed, ...told } = webhook;
    return done({ ...told, failures: 0, stoppedAt: null, stoppedBecause: null });
  });
}

/** Stops a webhook, and says why in the record; once. */
export async function stopTelling(database: Database, webhook: KeptWebhook, why: string): Promise<void> {
  await database.act(webhook.projectId, async (tx) => {
    if (!(await stopWebhook(tx, webhook.id, why))) return done(undefined);
    const { host } = new URL(webhook.url);
    await append(tx, webhook.projectId, serviceActor, () => ({ kind: "webhook stopped", host, why }));
    return done(undefined);
  });
}

/** What a webhook was told, the latest first. */
export async function readTold(
  db: Connection,
  part: Part,
  { id, after, limit }: { id: string; after: string | undefined; limit: number },
): Promise<Outcome<Page<WebhookDelivery> | null>> {
  if ((await webhookIn(db, part, id)) === null) return refuse("not-found");
  const read = await readDeliveries(db, id, { after, limit: limit + 1 });
  return done(read && pageOf(read, limit, (delivery) => delivery.id));
}

async function webhookIn(db: Connection, { projectId }: Part, id: string): Promise<KeptWebhook | null> {
  const webhook = await findWebhook(db, id);
  return webhook?.projectId === projectId ? webhook : null;
}
