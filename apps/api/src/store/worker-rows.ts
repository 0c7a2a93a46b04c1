import type { Connection } from "./connection.ts";

/** A worker that has not been heard of for this long is gone. */
const patienceMs = 10_000;

export async function beat(db: Connection, ids: readonly string[]): Promise<void> {
  await db.$executeRaw`
    insert into "worker" ("id", "beat_at") select id, now() from unnest(${[...ids]}::text[]) as id
    on conflict ("id") do update set "beat_at" = now()`;
}

/** Takes workers off the list and gives back what they hold. */
export async function leave(db: Connection, ids: readonly string[]): Promise<void> {
  await db.$executeRaw`delete from "worker" where "id" = any(${[...ids]})`;
  await db.$queryRaw`select graphile_worker.force_unlock_workers(${[...ids]}::text[])::text`;
}

/**
 * Gives back the jobs of workers that are gone, and says how many workers those were. A job taken only just now is left
 * alone: its worker may not have been on the list yet.
 */
export async function unlockVanished(db: Connection): Promise<number> {
  const patience = patienceMs / 1000;
  const gone = await db.$queryRaw<{ id: string }[]>`
    select distinct j."locked_by" as "id" from graphile_worker._private_jobs j
    where j."locked_at" < now() - make_interval(secs => ${patience}::float8) and not exists (
      select 1 from "worker" w where w."id" = j."locked_by" and w."beat_at" > now() - make_interval(secs => ${patience}::float8))`;
  if (gone.length > 0)
    await leave(
      db,
      gone.map(({ id }) => id),
    );
  return gone.length;
}
