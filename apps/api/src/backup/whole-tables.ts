import type pg from "pg";

/** What has run out when a backup is read, or is counted anew: who is signed in, limits, workers, answers kept for repeats. */
const passing = ["session", "rate_window", "worker", "repeatable_answer", "_prisma_migrations"];

/** Every table of the service, each after those it refers to, with its key. */
export async function readWholeTables(client: pg.ClientBase): Promise<{ name: string; key: string[] }[]> {
  const { rows } = await client.query<{ name: string; key: string[]; refersTo: string[] }>(
    `select c.relname::text as "name",
       (select array_agg(a.attname::text order by array_position(i.indkey, a.attnum)) from pg_index i
         join pg_attribute a on a.attrelid = c.oid and a.attnum = any(i.indkey) where i.indrelid = c.oid and i.indisprimary) as "key",
       (select coalesce(array_agg(distinct r.relname::text), '{}') from pg_constraint f join pg_class r on r.oid = f.confrelid
         where f.conrelid = c.oid and f.contype = 'f' and f.confrelid <> c.oid) as "refersTo"
     from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relname <> all($1) order by c.relname`,
    [passing],
  );
  const placed: typeof rows = [];
  for (let waiting = rows; waiting.length > 0;) {
    const later = new Set(waiting.map(({ name }) => name));
    const next = waiting.filter(({ refersTo }) => refersTo.every((name) => !later.has(name)));
    if (next.length === 0) throw new Error(`tables refer to one another in a circle: ${[...later].join(", ")}`);
    placed.push(...next);
    waiting = waiting.filter((table) => !next.includes(table));
  }
  return placed.map(({ name, key }) => ({ name, key }));
}

/** Names of the migrations a database has; empty where it has no tables yet. */
export async function readApplied(client: pg.ClientBase): Promise<string[]> {
  const { rows: there } = await client.query<{ there: boolean }>(
    `select to_regclass('public._prisma_migrations') is not null as "there"`,
  );
  if (there[0]?.there !== true) return [];
  const { rows } = await client.query<{ name: string }>(
    `select migration_name as "name" from "_prisma_migrations" where finished_at is not null and rolled_back_at is null order by migration_name`,
  );
  return rows.map(({ name }) => name);
}

/** True where nobody is known and no project is kept. */
export async function isEmpty(client: pg.ClientBase): Promise<boolean> {
  const { rows } = await client.query<{ there: boolean }>(`select to_regclass('public.person') is not null as "there"`);
  if (rows[0]?.there !== true) return true;
  const { rows: found } = await client.query<{ empty: boolean }>(
    `select not exists (select 1 from "person") and not exists (select 1 from "project") as "empty"`,
  );
  return found[0]?.empty === true;
}
