import { BroughtIn, type Actor, type ToldEntry } from "@cornerway/schema";
import type { Connection } from "./connection.ts";
import { insertRows, type Row } from "./project-tables.ts";

/** An entry as it came, with its place in the tree. */
export type BroughtEntry = ToldEntry & { leaf: string; head: string };

export interface BroughtProject {
  project: { id: string; name: string; place: string; client: string; openedAt: string };
  entries: readonly BroughtEntry[];
  frontier: readonly string[];
}

/** Writes a project and its record as they came: numbers, times, actors and digests are those of where it was made. */
export async function insertBrought(tx: Connection, { project, entries, frontier }: BroughtProject): Promise<void> {
  const { id, name, place, client, openedAt } = project;
  const last = entries.at(-1);
  if (last === undefined) throw new RangeError("insertBrought: a record has an entry");
  await tx.project.create({
    data: { id, name, place, client, openedAt, last: last.number, lastAt: last.time, frontier: [...frontier] },
  });
  await insertRows(
    tx,
    tableOf("record_entry", entryColumns),
    entries.map((entry) => entryRow(id, entry)),
  );
  const opened = entries.flatMap((entry) => payloadRow(id, entry));
  await insertRows(tx, tableOf("record_payload", payloadColumns), opened);
}

const entryColumns = [
  ...["project_id", "number", "at", "actor_id", "actor_role", "kind", "payload_digest", "leaf", "head"],
];
const payloadColumns = ["project_id", "number", "actor_name", "actor_token", "salt", "payload"];
const tableOf = (name: string, columns: readonly string[]) => ({ name, columns, bytes: [], primaryKey: [] });

const entryRow = (project: string, { number, time, actor, role, kind, digest, leaf, head }: BroughtEntry): Row => ({
  ...{ project_id: project, number, at: time, actor_id: actor, actor_role: role, kind, payload_digest: digest },
  ...{ leaf, head },
});

const payloadRow = (project: string, { number, opened }: BroughtEntry): Row[] =>
  opened === null
    ? []
    : [
        {
          ...{ project_id: project, number, actor_name: opened.actorName, actor_token: opened.token ?? null },
          ...{ salt: opened.salt, payload: opened.payload },
        },
      ];

/** From where the last part of a record that was brought in came, and the entry that says so; null where all of it is from here. */
export async function readBroughtIn(
  db: Connection,
  projectId: string,
): Promise<(BroughtIn & { number: number; by: Actor["name"] }) | null> {
  const rows = await db.$queryRaw<{ number: number; by: string; payload: unknown }[]>`
    select e."number", p."actor_name" as "by", p."payload" - 'kind' as "payload"
    from "record_entry" e join "record_payload" p on p."project_id" = e."project_id" and p."number" = e."number"
    where e."project_id" = ${projectId}::uuid and e."kind" = 'brought in' order by e."number" desc limit 1`;
  const [row] = rows;
  return row === undefined ? null : { ...BroughtIn.parse(row.payload), number: row.number, by: row.by };
}
