import { TokenScope, type AccessToken } from "@cornerway/schema";
import type { AccessToken as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";
import type { Person } from "./person-rows.ts";

export interface NewTokenRow {
  id: string;
  personId: string;
  name: string;
  prefix: string;
  secretHash: string;
  scopes: TokenScope[];
  days: number;
}

/** A token that is good now, with the person it acts for. */
export interface FoundToken {
  id: string;
  prefix: string;
  scopes: TokenScope[];
  /** Never as an administrator, whatever they are by hand. */
  person: Person & { administrator: false; byLink: false };
}

/** Use is written down no more often than this. */
const usedEverySeconds = 60;

/** The token of a secret's hash while it is good, its use written down; null when it is unknown, withdrawn or expired. */
export async function useToken(db: Connection, secretHash: string): Promise<FoundToken | null> {
  const rows = await db.$queryRaw<
    { id: string; prefix: string; scopes: string[]; personId: string; name: string; email: string; stale: boolean }[]
  >`
    select t."id"::text, t."prefix", t."scopes", p."id"::text as "personId", p."name", p."email",
      coalesce(t."last_used_at" < now() - make_interval(secs => ${usedEverySeconds}::float8), true) as "stale"
    from "access_token" t join "person" p on p."id" = t."person_id"
    where t."secret_hash" = ${secretHash} and t."expires_at" > now() and t."revoked_at" is null`;
  const [row] = rows;
  if (row === undefined) return null;
  const { id, prefix, personId, name, email, stale } = row;
  if (stale) await db.$executeRaw`update "access_token" set "last_used_at" = now() where "id" = ${id}::uuid`;
  return {
    id,
    prefix,
    scopes: row.scopes.map((scope) => TokenScope.parse(scope)),
    person: { id: personId, name, email, administrator: false, byLink: false },
  };
}

/** Makes a token; its end is counted from the database's clock. */
export async function insertToken(tx: Connection, { days, ...row }: NewTokenRow): Promise<AccessToken> {
  const { id, personId, name, prefix, secretHash, scopes } = row;
  await tx.$executeRaw`
    insert into "access_token" ("id", "person_id", "name", "prefix", "secret_hash", "scopes", "expires_at")
    values (${id}::uuid, ${personId}::uuid, ${name}, ${prefix}, ${secretHash}, ${scopes}, now() + make_interval(days => ${days}::int))`;
  return tokenOf(await tx.accessToken.findUniqueOrThrow({ where: { id } }));
}

/** Tokens of a person that are not over, the newest first. */
export async function readTokens(db: Connection, personId: string): Promise<AccessToken[]> {
  const rows = await db.accessToken.findMany({
    where: { personId, revokedAt: null, expiresAt: { gt: new Date() } },
    orderBy: [{ madeAt: "desc" }, { id: "asc" }],
  });
  return rows.map(tokenOf);
}

export const countTokens = (tx: Connection, personId: string): Promise<number> =>
  tx.accessToken.count({ where: { personId, revokedAt: null, expiresAt: { gt: new Date() } } });

/** Withdraws a token of a person; false when they have no such one that is good. */
export async function revokeToken(db: Connection, personId: string, id: string): Promise<boolean> {
  const { count } = await db.accessToken.updateMany({
    where: { id, personId, revokedAt: null },
    data: { revokedAt: new Date() },
  });
  return count > 0;
}

const tokenOf = (row: Row): AccessToken => ({
  id: row.id,
  name: row.name,
  prefix: row.prefix,
  scopes: row.scopes.map((scope) => TokenScope.parse(scope)),
  madeAt: row.madeAt.toISOString(),
  expiresAt: row.expiresAt.toISOString(),
  lastUsedAt: row.lastUsedAt?.toISOString() ?? null,
  revokedAt: row.revokedAt?.toISOString() ?? null,
});
