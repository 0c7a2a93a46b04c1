import { Operation, type Digest, type Scheme } from "@cornerway/schema";
import { z } from "zod";
import type { Connection } from "./connection.ts";
import { digestOfScheme } from "./digest-of-scheme.ts";
import { keepScheme, knownScheme } from "./known-schemes.ts";
import { storedScheme } from "./stored-scheme.ts";

export interface DraftRow {
  number: number;
  contentDigest: Digest;
  scheme: Scheme;
}

export interface DraftActRow {
  id: string;
  number: number;
  entry: number;
  personId: string;
  personName: string;
  bodyDigest: Digest;
  contentDigest: Digest;
  undoes: string | null;
  writes: string[];
  operations: Operation[];
  inverse: Operation[];
}

const Operations = z.array(Operation);

/**
 * The working copy under its digest of this build: one stored by an older build, in an older version or judged by other
 * catalogue rows, has another digest in its row.
 */
export async function readDraft(db: Connection, projectId: string): Promise<DraftRow> {
  const heads = await db.$queryRaw<Omit<DraftRow, "scheme">[]>`
    select "number", "content_digest" as "contentDigest" from "draft" where "project_id" = ${projectId}::uuid`;
  const known = heads[0] && knownScheme(heads[0].contentDigest);
  if (heads[0] !== undefined && known !== undefined) return { ...heads[0], scheme: known };
  const { number, scheme: stored } = await db.draft.findUniqueOrThrow({ where: { projectId } });
  const scheme = storedScheme(stored);
  const contentDigest = digestOfScheme(scheme);
  return { number, contentDigest, scheme: keepScheme(contentDigest, scheme) };
}

export async function updateDraft(tx: Connection, projectId: string, draft: DraftRow): Promise<void> {
  const { number, contentDigest, scheme } = draft;
  await tx.$executeRaw`
    update "draft" set "number" = ${number}, "content_digest" = ${contentDigest}, "scheme" = ${JSON.stringify(scheme)}::jsonb
    where "project_id" = ${projectId}::uuid`;
  keepScheme(draft.contentDigest, draft.scheme);
}

export async function findDraftAct(db: Connection, projectId: string, id: string): Promise<DraftActRow | null> {
  const rows = await db.$queryRaw<UnreadAct[]>`
    select "id"::text, "number", "entry", "person_id"::text as "personId", "person_name" as "personName",
      "body_digest" as "bodyDigest", "content_digest" as "contentDigest", "undoes"::text, "writes", "operations", "inverse"
    from "draft_act" where "project_id" = ${projectId}::uuid and "id" = ${id}::uuid`;
  return rows[0] === undefined ? null : parsed(rows[0]);
}

/** Acts after a draft number that wrote any of the keys, latest first. */
export async function readActsThatWrote(
  db: Connection,
  projectId: string,
  { after, keys }: { after: number; keys: string[] },
): Promise<DraftActRow[]> {
  const rows = await db.draftAct.findMany({
    where: { projectId, number: { gt: after }, writes: { hasSome: keys } },
    orderBy: { number: "desc" },
  });
  return rows.map(parsed);
}

/** Acts after a draft number, in order, at most `limit`. */
export async function readActsAfter(
  db: Connection,
  projectId: string,
  { after, limit }: { after: number; limit: number },
): Promise<DraftActRow[]> {
  const rows = await db.draftAct.findMany({
    where: { projectId, number: { gt: after } },
    orderBy: { number: "asc" },
    take: limit,
  });
  return rows.map(parsed);
}

export async function insertDraftAct(tx: Connection, projectId: string, act: DraftActRow): Promise<void> {
  await tx.$executeRaw`
    insert into "draft_act" ("project_id", "id", "number", "entry", "person_id", "person_name", "body_digest",
      "content_digest", "undoes", "writes", "operations", "inverse")
    values (${projectId}::uuid, ${act.id}::uuid, ${act.number}, ${act.entry}, ${act.personId}::uuid, ${act.personName},
      ${act.bodyDigest}, ${act.contentDigest}, ${act.undoes}::uuid, ${act.writes},
      ${JSON.stringify(act.operations)}::jsonb, ${JSON.stringify(act.inverse)}::jsonb)`;
}

type UnreadAct = Omit<DraftActRow, "operations" | "inverse"> & { operations: unknown; inverse: unknown };

const parsed = (row: UnreadAct): DraftActRow => ({
  ...row,
  operations: Operations.parse(row.operations),
  inverse: Operations.parse(row.inverse),
});
