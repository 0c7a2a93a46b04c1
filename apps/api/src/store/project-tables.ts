import { z } from "zod";
import type { Connection } from "./connection.ts";

/** A table whose rows belong to one project each, as the database itself describes it. */
export interface ProjectTable {
  name: string;
  columns: readonly string[];
  /** Columns of bytes, kept as files of their own. */
  bytes: readonly string[];
  primaryKey: readonly string[];
}

export const Row = z.record(z.string(), z.unknown());
export type Row = z.infer<typeof Row>;

/**
 * What is not content of a project: who may come in, whom it is told to, what each has read; and the record, which an
 * archive holds in a form of its own.
 */
export const leftOut: readonly string[] = [
  ...["record_entry", "record_payload", "membership", "one_time_link", "webhook", "notice_mark"],
];

/** Rows of what is only asked for yet are left out: nobody waits for them where the archive is read. */
const onlyWhere: Record<string, string> = {
  permit_set: `t."state" = 'done'`,
  assessment_run: `exists (select 1 from "assessment" a where a."project_id" = t."project_id" and a."letter" = t."letter" and a."attempt" = t."attempt")`,
};

/** Every table with rows of a project, each after those it refers to. A new one is among them by itself. */
export async function readProjectTables(db: Connection): Promise<ProjectTable[]> {
  const tables = await db.$queryRaw<(ProjectTable & { refersTo: string[] })[]>`
    select c.relname::text as "name",
      array_agg(a.attname::text order by a.attnum) as "columns",
      coalesce(array_agg(a.attname::text order by a.attnum) filter (where a.atttypid = 'bytea'::regtype), '{}') as "bytes",
      (select coalesce(array_agg(k.attname::text order by k.attnum), '{}') from pg_index i
        join pg_attribute k on k.attrelid = c.oid and k.attnum = any(i.indkey) where i.indrelid = c.oid and i.indisprimary) as "primaryKey",
      (select coalesce(array_agg(distinct f.confrelid::regclass::text), '{}') from pg_constraint f
        where f.conrelid = c.oid and f.contype = 'f' and f.confrelid <> c.oid) as "refersTo"
    from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
      and exists (select 1 from pg_attribute p where p.attrelid = c.oid and p.attname = 'project_id')
    group by c.oid, c.relname order by c.relname`;
  return inOrder(tables.filter(({ name }) => !leftOut.includes(name)));
}

function inOrder<T extends { name: string; refersTo: string[] }>(tables: readonly T[]): T[] {
  const placed: T[] = [];
  let waiting = [...tables];
  while (waiting.length > 0) {
    const later = new Set(waiting.map(({ name }) => name));
    const next = waiting.filter(({ refersTo }) => refersTo.every((name) => !later.has(unquoted(name))));
    if (next.length === 0) throw new Error(`tables refer to one another in a circle: ${[...later].join(", ")}`);
    placed.push(...next);
    waiting = waiting.filter((table) => !next.includes(table));
  }
  return placed;
}

const unquoted = (name: string): string => name.replaceAll('"', "");

/** Rows of a table that belong to a project, by their key, without their bytes. */
export async function readRows(
  db: Connection,
  { name, bytes, primaryKey }: ProjectTable,
  projectId: string,
): Promise<Row[]> {
  const order = primaryKey.map((column) => `t."${column}"`).join(", ");
  const where = onlyWhere[name] ?? "true";
  const rows = await db.$queryRawUnsafe<{ row: unknown }[]>(
    `select to_jsonb(t) - $2::text[] as "row" from "${name}" t where t."project_id" = $1::uuid and ${where} order by ${order}`,
    projectId,
    [...bytes],
  );
  return rows.map(({ row }) => Row.parse(row));
}

/** The bytes in one column of a row that `readRows` gave; null where there are none. */
export async function readBytes(
  db: Connection,
  { name, primaryKey }: ProjectTable,
  { row, column }: { row: Row; column: string },
): Promise<Uint8Array | null> {
  const where = primaryKey.map((key, at) => `t."${key}"::text = $${at + 1}`).join(" and ");
  const values = primaryKey.map((key) => String(row[key]));
  const found = await db.$queryRawUnsafe<{ bytes: Uint8Array | null }[]>(
    `select t."${column}" as "bytes" from "${name}" t where ${where}`,
    ...values,
  );
  return found[0]?.bytes ?? null;
}

const atOnce = 500;

/** Writes rows as they are. Throws where one has a column the table has not, so that nothing is left behind unseen. */
export async function insertRows(tx: Connection, { name, columns }: ProjectTable, rows: readonly Row[]): Promise<void> {
  const given = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const unknown = given.filter((column) => !columns.includes(column));
  if (unknown.length > 0) throw new RangeError(`${name} has no column ${unknown.join(", ")}`);
  const listed = given.map((column) => `"${column}"`).join(", ");
  for (let from = 0; from < rows.length; from += atOnce)
    await tx.$executeRawUnsafe(
      `insert into "${name}" (${listed}) select ${listed} from jsonb_populate_recordset(null::"${name}", $1::jsonb)`,
      JSON.stringify(rows.slice(from, from + atOnce)),
    );
}
