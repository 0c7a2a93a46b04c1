import { Actor, type RecordEntry, type RecordPayload, type RecordKind, recordKinds } from "@cornerway/schema";
import { z } from "zod";
import type { Connection } from "./connection.ts";

/**
 * A payload as it was appended. Its kind is looked at and no more: `append` writes only whole ones, nothing alters them
 * since, and every reader of every entry would pay for parsing hundreds of operations again.
 */
const KeptPayload = z.custom<RecordPayload>(
  (value) => typeof value === "object" && value !== null && "kind" in value && knownKinds.has(value.kind),
);
const knownKinds = new Set<unknown>(recordKinds);

/** Where the next entry of a record goes, and the Merkle frontier before it. */
export interface Place {
  number: number;
  at: string;
  frontier: string[];
}

export interface EntryRow {
  projectId: string;
  place: Place;
  actor: Actor;
  payload: RecordPayload;
  salt: string;
  payloadDigest: string;
  leaf: string;
  head: string;
  frontierAfter: string[];
}

/** Locks the project's row: the first thing every act does, so that there is one lock order everywhere. */
export async function lockProject(tx: Connection, projectId: string): Promise<void> {
  await tx.$queryRaw`select 1 from "project" where "id" = ${projectId}::uuid for no key update`;
}

/** Takes the next number. The clock is read after the row lock and never runs back within one record. */
export async function takePlace(tx: Connection, projectId: string): Promise<Place> {
  const rows = await tx.$queryRaw<{ last: number; last_at: Date; frontier: string[] }[]>`
    update "project" set "last" = "last" + 1, "last_at" = greatest("last_at", date_trunc('milliseconds', clock_timestamp()))
    where "id" = ${projectId}::uuid returning "last", "last_at", "frontier"`;
  const row = rows[0];
  if (row === undefined) throw new Error(`takePlace: there is no project ${projectId}`);
  return { number: row.last, at: row.last_at.toISOString(), frontier: row.frontier };
}

/** Writes entry, payload and frontier, and tells listeners project and number when the transaction commits. */
export async function insertEntry(tx: Connection, row: EntryRow): Promise<void> {
  const { projectId, place, actor } = row;
  await tx.$queryRaw`
    with moved as (
      update "project" set "frontier" = ${row.frontierAfter} where "id" = ${projectId}::uuid
    ), entry as (
      insert into "record_entry" ("project_id", "number", "at", "actor_id", "actor_role", "kind", "payload_digest", "leaf", "head")
      values (${projectId}::uuid, ${place.number}, ${place.at}::timestamptz, ${actor.id}::uuid, ${actor.role},
        ${row.payload.kind}, ${row.payloadDigest}, ${row.leaf}, ${row.head})
    ), payload as (
      insert into "record_payload" ("project_id", "number", "actor_name", "actor_token", "salt", "payload")
      values (${projectId}::uuid, ${place.number}, ${actor.name}, ${actor.token ?? null}, ${row.salt}, ${JSON.stringify(row.payload)}::jsonb)
    )
    select pg_notify('cornerway_record', ${JSON.stringify({ project: projectId, number: place.number })})::text`;
}

/** Entries after a number in order, only of the kinds asked for, at most `limit`. */
export async function readEntries(
  db: Connection,
  projectId: string,
  { after, limit, kinds }: { after: number; limit: number; kinds: readonly RecordKind[] },
): Promise<RecordEntry[]> {
  const rows = await db.$queryRaw<UnreadEntry[]>`
    select e."number", e."at", e."actor_id"::text as "actorId", e."actor_role" as "actorRole", e."kind", e."leaf", e."head",
      p."actor_name" as "actorName", p."actor_token" as "actorToken", p."payload"
    from "record_entry" e left join "record_payload" p on p."project_id" = e."project_id" and p."number" = e."number"
    where e."project_id" = ${projectId}::uuid and e."number" > ${after} and e."kind" = any(${[...kinds]})
    order by e."number" limit ${limit}`;
  return rows.map((row) => entryOf(projectId, row));
}

/** Entries by their numbers, the newest first. Who may see them is asked before. */
export async function readEntriesNumbered(
  db: Connection,
  projectId: string,
  numbers: readonly number[],
): Promise<RecordEntry[]> {
  const rows = await db.$queryRaw<UnreadEntry[]>`
    select e."number", e."at", e."actor_id"::text as "actorId", e."actor_role" as "actorRole", e."kind", e."leaf", e."head",
      p."actor_name" as "actorName", p."actor_token" as "actorToken", p."payload"
    from "record_entry" e left join "record_payload" p on p."project_id" = e."project_id" and p."number" = e."number"
    where e."project_id" = ${projectId}::uuid and e."number" = any(${[...numbers]}) order by e."number" desc`;
  return rows.map((row) => entryOf(projectId, row));
}

function entryOf(projectId: string, { actorId, actorRole, actorName, actorToken, ...row }: UnreadEntry): RecordEntry {
  const { number, at, kind, leaf, head, payload } = row;
  return {
    ...{ projectId, number, at: at.toISOString(), kind, leaf, head },
    actor: Actor.parse({
      ...{ id: actorId, name: actorName ?? "withheld", role: actorRole },
      ...(actorToken === null ? {} : { token: actorToken }),
    }),
    payload: payload === null ? null : KeptPayload.parse(payload),
  };
}

interface UnreadEntry {
  number: number;
  at: Date;
  actorId: string;
  actorRole: string;
  kind: string;
  leaf: string;
  head: string;
  actorName: string | null;
  actorToken: string | null;
  payload: unknown;
}

/** The tree head after an entry, with its time. Throws where there is no such entry. */
export async function readHead(
  db: Connection,
  projectId: string,
  number: number,
): Promise<{ number: number; at: string; head: string }> {
  const { at, head } = await db.recordEntry.findUniqueOrThrow({
    where: { projectId_number: { projectId, number } },
    select: { at: true, head: true },
  });
  return { number, at: at.toISOString(), head };
}

/** Number of the last entry; undefined when there is no such project. */
export async function lastNumber(db: Connection, projectId: string): Promise<number | undefined> {
  const row = await db.project.findUnique({ where: { id: projectId }, select: { last: true } });
  return row?.last;
}
