import { ToldEntry, type BundleEntry, type RecordKind } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

/** Leaf hashes of entries 1 to `upTo`, in order. */
export async function readLeaves(db: Connection, projectId: string, upTo: number): Promise<string[]> {
  const rows = await db.recordEntry.findMany({
    where: { projectId, number: { lte: upTo } },
    select: { leaf: true },
    orderBy: { number: "asc" },
  });
  return rows.map(({ leaf }) => leaf);
}

/** Leaf and kind of one entry; null where there is none. */
export const findLeaf = (db: Connection, projectId: string, number: number) =>
  db.recordEntry.findUnique({
    where: { projectId_number: { projectId, number } },
    select: { leaf: true, kind: true },
  });

/** Entries 1 to `upTo` for a bundle, opened where they are of the kinds asked for, otherwise as leaves alone. */
export async function readBundleEntries(
  db: Connection,
  projectId: string,
  { upTo, kinds }: { upTo: number; kinds: readonly RecordKind[] },
): Promise<BundleEntry[]> {
  const rows = await db.$queryRaw<EntryRow[]>`
    select e."number", e."at", e."actor_id"::text as "actor", e."actor_role" as "role", e."kind", e."leaf",
      e."payload_digest" as "digest", p."salt", p."actor_name" as "actorName", p."actor_token" as "token", p."payload"
    from "record_entry" e
      left join "record_payload" p
        on p."project_id" = e."project_id" and p."number" = e."number" and e."kind" = any(${[...kinds]})
    where e."project_id" = ${projectId}::uuid and e."number" <= ${upTo}
    order by e."number"`;
  const told = new Set<string>(kinds);
  return rows.map((row) => (told.has(row.kind) ? toldEntry(row) : { number: row.number, leaf: row.leaf }));
}

interface EntryRow {
  number: number;
  at: Date;
  actor: string;
  role: string;
  kind: string;
  leaf: string;
  digest: string;
  salt: string | null;
  actorName: string | null;
  token: string | null;
  payload: unknown;
}

function toldEntry({ number, at, actor, role, kind, digest, salt, actorName, token, payload }: EntryRow): BundleEntry {
  const opened = salt === null ? null : { ...{ salt, actorName, payload }, ...(token === null ? {} : { token }) };
  return ToldEntry.parse({ ...{ number, actor, role, kind, digest, opened }, time: at.toISOString() });
}
