import type { Connection } from "./connection.ts";

/**
 * Counts one more try under a key and says how many there were in the window that began with the first of them. The
 * database's clock is the only one that counts, whatever those of the processes say.
 */
export async function countTry(db: Connection, key: string, windowMs: number): Promise<number> {
  const rows = await db.$queryRaw<{ count: number }[]>`
    insert into "rate_window" as w ("key", "count", "ends_at") values (${key}, 1, now() + make_interval(secs => ${windowMs / 1000}::float8))
    on conflict ("key") do update set
      "count" = case when w."ends_at" < now() then 1 else w."count" + 1 end,
      "ends_at" = case when w."ends_at" < now() then excluded."ends_at" else w."ends_at" end
    returning "count"`;
  return rows[0]?.count ?? 1;
}

/** Forgets the tries under a key. */
export async function forgetTries(db: Connection, key: string): Promise<void> {
  await db.$executeRaw`delete from "rate_window" where "key" = ${key}`;
}

export interface Counted {
  key: string;
  /** All that were counted in the window, by every process. */
  count: number;
  endsInMs: number;
}

/** Adds to the counts of several keys at once, each in the window that began with the first of its tries. */
export async function addTries(
  db: Connection,
  added: readonly { key: string; count: number }[],
  windowMs: number,
): Promise<Counted[]> {
  const [keys, counts] = [added.map(({ key }) => key), added.map(({ count }) => count)];
  return db.$queryRaw`
    insert into "rate_window" as w ("key", "count", "ends_at")
    select "key", "count", now() + make_interval(secs => ${windowMs / 1000}::float8)
    from unnest(${keys}::text[], ${counts}::int[]) as added("key", "count") order by "key"
    on conflict ("key") do update set
      "count" = case when w."ends_at" < now() then excluded."count" else w."count" + excluded."count" end,
      "ends_at" = case when w."ends_at" < now() then excluded."ends_at" else w."ends_at" end
    returning "key", "count", (extract(epoch from "ends_at" - now()) * 1000)::int as "endsInMs"`;
}
