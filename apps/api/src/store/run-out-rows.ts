import type { Connection } from "./connection.ts";

export async function deleteExpiredSessions(db: Connection): Promise<void> {
  await db.session.deleteMany({ where: { expiresAt: { lt: new Date() } } });
}

export async function deleteEndedRateWindows(db: Connection): Promise<void> {
  await db.$executeRaw`delete from "rate_window" where "ends_at" < now()`;
}

/** Of workers not heard of for a day nothing is held any more. */
export async function deleteOldWorkers(db: Connection): Promise<void> {
  await db.$executeRaw`delete from "worker" where "beat_at" < now() - interval '1 day'`;
}

/** Answers that may not be asked again under their Idempotency-Key. */
export async function deleteOldAnswers(db: Connection): Promise<void> {
  await db.$executeRaw`delete from "repeatable_answer" where "expires_at" < now()`;
}

/** The log of what webhooks were told goes back a month. */
export async function deleteOldDeliveries(db: Connection): Promise<void> {
  await db.$executeRaw`delete from "webhook_delivery" where "at" < now() - interval '30 days'`;
}
