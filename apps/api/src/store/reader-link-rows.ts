import type { ReaderLink } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

/** Links by which someone reads a project now, the newest first, with how often each was opened, from the record. */
export async function readReaderLinks(db: Connection, projectId: string): Promise<ReaderLink[]> {
  const rows = await db.$queryRaw<Row[]>`
    select p."id"::text, p."name", l."made_by" ->> 'name' as "madeBy", l."made_at" as "madeAt", m."expires_at" as "expiresAt",
      (select count(*)::int from "record_entry" e where e."project_id" = l."project_id" and e."actor_id" = p."id"
        and e."kind" = 'reader link opened') as "opened",
      (select max(e."at") from "record_entry" e where e."project_id" = l."project_id" and e."actor_id" = p."id"
        and e."kind" = 'reader link opened') as "lastOpenedAt"
    from "one_time_link" l
      join "person" p on p."id" = l."person_id"
      join "membership" m on m."project_id" = l."project_id" and m."person_id" = p."id"
    where l."project_id" = ${projectId}::uuid and l."kind" = 'reader-link' and l."closed_at" is null and m."expires_at" > now()
    order by l."made_at" desc, p."id"`;
  return rows.map(({ madeAt, expiresAt, lastOpenedAt, ...row }) => ({
    ...{ ...row, madeAt: madeAt.toISOString(), expiresAt: expiresAt.toISOString() },
    lastOpenedAt: lastOpenedAt?.toISOString() ?? null,
  }));
}

interface Row {
  id: string;
  name: string;
  madeBy: string;
  madeAt: Date;
  expiresAt: Date;
  opened: number;
  lastOpenedAt: Date | null;
}

/** Those who read a project by a link that is not closed: all of them, one, or those whose link someone made. */
export async function findReaders(
  db: Connection,
  projectId: string,
  { id, madeBy }: { id?: string; madeBy?: string },
): Promise<{ id: string; name: string }[]> {
  return db.$queryRaw`
    select p."id"::text, p."name" from "one_time_link" l join "person" p on p."id" = l."person_id"
    where l."project_id" = ${projectId}::uuid and l."kind" = 'reader-link' and l."closed_at" is null
      and (${id ?? null}::uuid is null or p."id" = ${id ?? null}::uuid)
      and (${madeBy ?? null}::text is null or l."made_by" ->> 'id' = ${madeBy ?? null})
    order by l."made_at", p."id"`;
}
