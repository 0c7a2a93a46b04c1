import type { Digest } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

/** What is sent under an Idempotency-Key: by whom, to where, and what. */
export interface Repeatable {
  personId: string;
  /** Method and address. */
  way: string;
  key: string;
  bodyDigest: Digest;
}

const keptHours = 24;

/**
 * Takes the key for the transaction, so that the same request sent twice at once waits for its first answer, and reads
 * what was answered under it within a day; undefined when nothing was.
 */
export async function takeKey(
  tx: Connection,
  { personId, way, key }: Repeatable,
): Promise<{ bodyDigest: Digest; answer: unknown } | undefined> {
  await tx.$queryRaw`select pg_advisory_xact_lock(hashtextextended(${`${personId} ${way} ${key}`}, 0))::text`;
  await tx.$executeRaw`
    delete from "repeatable_answer"
    where "person_id" = ${personId}::uuid and "way" = ${way} and "key" = ${key} and "expires_at" < now()`;
  const row = await tx.repeatableAnswer.findUnique({ where: { personId_way_key: { personId, way, key } } });
  return row === null ? undefined : { bodyDigest: row.bodyDigest, answer: row.answer };
}

export async function insertAnswerKept(
  tx: Connection,
  { personId, way, key, bodyDigest }: Repeatable,
  answer: unknown,
): Promise<void> {
  await tx.$executeRaw`
    insert into "repeatable_answer" ("person_id", "way", "key", "body_digest", "answer", "expires_at")
    values (${personId}::uuid, ${way}, ${key}, ${bodyDigest}, ${JSON.stringify(answer)}::jsonb, now() + make_interval(hours => ${keptHours}::int))`;
}
