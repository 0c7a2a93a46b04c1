import type { Webhook, WebhookDelivery } from "@cornerway/schema";
import type { Webhook as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

export interface NewWebhookRow {
  id: string;
  projectId: string;
  personId: string;
  url: string;
  sealedSecret: string;
}

/** A webhook with what it needs to be told something. */
export interface KeptWebhook extends Webhook {
  projectId: string;
  sealedSecret: string;
}

const withMaker = { person: { select: { name: true } } } as const;

export async function insertWebhook(tx: Connection, row: NewWebhookRow): Promise<Webhook> {
  return webhookOf(await tx.webhook.create({ data: row, include: withMaker }));
}

export const countWebhooks = (tx: Connection, projectId: string): Promise<number> =>
  tx.webhook.count({ where: { projectId } });

/** All webhooks of a project, at most ten, in the order they were made. */
export async function readWebhooks(db: Connection, projectId: string): Promise<Webhook[]> {
  const rows = await db.webhook.findMany({
    where: { projectId },
    include: withMaker,
    orderBy: [{ madeAt: "asc" }, { id: "asc" }],
  });
  return rows.map(webhookOf);
}

export async function findWebhook(db: Connection, id: string): Promise<KeptWebhook | null> {
  const row = await db.webhook.findUnique({ where: { id }, include: withMaker });
  return row === null ? null : { ...webhookOf(row), projectId: row.projectId, sealedSecret: row.sealedSecret };
}

/** Ids of those that are told of a project. */
export async function readListening(tx: Connection, projectId: string): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    select "id"::text from "webhook" where "project_id" = ${projectId}::uuid and "stopped_at" is null`;
  return rows.map(({ id }) => id);
}

export async function deleteWebhook(tx: Connection, id: string): Promise<void> {
  await tx.webhook.deleteMany({ where: { id } });
}

/** Counts an entry that could not be told, and says how many there were in a row. */
export async function countFailure(db: Connection, id: string): Promise<number> {
  const rows = await db.$queryRaw<{ failures: number }[]>`
    update "webhook" set "failures" = "failures" + 1 where "id" = ${id}::uuid returning "failures"`;
  return rows[0]?.failures ?? 0;
}

export async function forgetFailures(db: Connection, id: string): Promise<void> {
  await db.$executeRaw`update "webhook" set "failures" = 0 where "id" = ${id}::uuid and "failures" > 0`;
}

/** True when it was working and is stopped by this. */
export async function stopWebhook(tx: Connection, id: string, why: string): Promise<boolean> {
  const where = { id, stoppedAt: null };
  return (await tx.webhook.updateMany({ where, data: { stoppedAt: new Date(), stoppedBecause: why } })).count > 0;
}

export async function resumeWebhook(tx: Connection, id: string): Promise<void> {
  await tx.webhook.updateMany({ where: { id }, data: { failures: 0, stoppedAt: null, stoppedBecause: null } });
}

export async function insertDelivery(
  db: Connection,
  {
    webhookId,
    ...row
  }: {
    webhookId: string;
    id: string;
    entry: number;
    attempt: number;
    status: number | null;
    error: string | null;
    ms: number;
  },
): Promise<void> {
  await db.webhookDelivery.create({ data: { webhookId, ...row } });
}

/** Tries to tell a webhook something, the latest first: those before one of them, at most `limit`; null when there is no such one. */
export async function readDeliveries(
  db: Connection,
  webhookId: string,
  { after, limit }: { after: string | undefined; limit: number },
): Promise<WebhookDelivery[] | null> {
  const from =
    after === undefined ? undefined : await db.webhookDelivery.findFirst({ where: { id: after, webhookId } });
  if (from === null) return null;
  const earlier = from && { OR: [{ at: { lt: from.at } }, { at: from.at, id: { lt: from.id } }] };
  const rows = await db.webhookDelivery.findMany({
    where: { webhookId, ...earlier },
    orderBy: [{ at: "desc" }, { id: "desc" }],
    take: limit,
  });
  return rows.map(({ webhookId: _known, at, ...row }) => ({ ...row, at: at.toISOString() }));
}

const webhookOf = (row: Row & { person: { name: string } }): Webhook => ({
  id: row.id,
  url: row.url,
  madeBy: { id: row.personId, name: row.person.name },
  madeAt: row.madeAt.toISOString(),
  failures: row.failures,
  stoppedAt: row.stoppedAt?.toISOString() ?? null,
  stoppedBecause: row.stoppedBecause,
});
