import type { Connection } from "./connection.ts";

/** Counts one more try under a key and says how many there were in the window that began with the first of them. */
export async function countTry(db: Connection, key: string, windowMs: number): Promise<number> {
  const ends = new Date(Date.now() + windowMs);
  const rows = await db.$queryRaw<{ count: number }[]>`
    insert into "rate_window" as w ("key", "count", "ends_at") values (${key}, 1, ${ends})
    on conflict ("key") do update set
      "count" = case when w."ends_at" < now() then 1 else w."count" + 1 end,
      "ends_at" = case when w."ends_at" < now() then excluded."ends_at" else w."ends_at" end
    returning "count"`;
  return rows[0]?.count ?? 1;
}

/** Forgets the tries under a key, and windows that have ended. */
export async function forgetTries(db: Connection, key: string): Promise<void> {
  await db.rateWindow.deleteMany({ where: { OR: [{ key }, { endsAt: { lt: new Date() } }] } });
}
