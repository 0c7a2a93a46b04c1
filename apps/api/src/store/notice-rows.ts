import { noticeLetters, type NoticeSetting, type RecordKind } from "@cornerway/schema";
import { z } from "zod";
import type { Connection } from "./connection.ts";

const Letters = z.enum(noticeLetters);

/** Numbers of the latest entries of some kinds that someone else wrote since this person has a part, newest first. */
export async function findNoticed(
  db: Connection,
  { projectId, personId }: { projectId: string; personId: string },
  { kinds, after, since, limit }: { kinds: readonly RecordKind[]; after: number; since?: Date; limit: number },
): Promise<number[]> {
  const rows = await db.$queryRaw<{ number: number }[]>`
    select e."number" from "record_entry" e
    where e."project_id" = ${projectId}::uuid and e."number" > ${after} and e."kind" = any(${[...kinds]})
      and e."actor_id" <> ${personId}::uuid and e."at" >= ${since ?? new Date(0)}
      and e."at" >= (select min(m."since") from "membership" m where m."project_id" = e."project_id" and m."person_id" = ${personId}::uuid)
    order by e."number" desc limit ${limit}`;
  return rows.map(({ number }) => number);
}

export interface NoticeMark {
  seen: number;
  lettered: number;
}

/** Up to where someone has seen a record, and up to where letters told them. */
export async function readNoticeMark(db: Connection, projectId: string, personId: string): Promise<NoticeMark> {
  const row = await db.noticeMark.findUnique({ where: { projectId_personId: { projectId, personId } } });
  return { seen: row?.seen ?? 0, lettered: row?.lettered ?? 0 };
}

/** Moves either on; neither ever goes back. */
export async function moveNoticeMark(
  db: Connection,
  { projectId, personId }: { projectId: string; personId: string },
  { seen = 0, lettered = 0 }: Partial<NoticeMark>,
): Promise<void> {
  await db.$executeRaw`
    insert into "notice_mark" ("project_id", "person_id", "seen", "lettered")
    values (${projectId}::uuid, ${personId}::uuid, ${seen}, ${lettered})
    on conflict ("project_id", "person_id") do update
      set "seen" = greatest("notice_mark"."seen", excluded."seen"), "lettered" = greatest("notice_mark"."lettered", excluded."lettered")`;
}

export async function readNoticeSetting(db: Connection, personId: string): Promise<NoticeSetting> {
  const row = await db.noticeSetting.findUnique({ where: { personId } });
  return { letters: row === null ? "none" : Letters.parse(row.letters) };
}

/** What happened before someone asks for letters goes into none. */
export async function writeNoticeSetting(db: Connection, personId: string, { letters }: NoticeSetting): Promise<void> {
  const since = new Date();
  await db.noticeSetting.upsert({
    where: { personId },
    create: { personId, letters, since },
    update: { letters, since, letteredAt: null },
  });
}

/** Someone who is told by letter. */
export interface LetterReader {
  personId: string;
  email: string;
  name: string;
  letters: "at once" | "daily";
  since: Date;
  letteredAt: Date | null;
}

export async function readLetterReaders(db: Connection): Promise<LetterReader[]> {
  const rows = await db.noticeSetting.findMany({
    where: { letters: { not: "none" } },
    include: { person: { select: { email: true, name: true } } },
    orderBy: { personId: "asc" },
  });
  return rows.flatMap(({ personId, since, letteredAt, person, ...row }) => {
    const letters = Letters.parse(row.letters);
    return letters === "none" ? [] : [{ personId, ...person, letters, since, letteredAt }];
  });
}

export async function noteLettered(db: Connection, personId: string, at: Date): Promise<void> {
  await db.noticeSetting.updateMany({ where: { personId }, data: { letteredAt: at } });
}
