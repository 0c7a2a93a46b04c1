import { type HeldPart, type Licence, type ProjectMember, Role } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

/** What someone holds in a project now. */
export interface Held {
  roles: Role[];
  /** True for an engineer whom the owner has not confirmed. */
  awaitsConfirmation: boolean;
}

export interface NewMembership {
  projectId: string;
  personId: string;
  role: Role;
  confirmedAt: string | null;
  /** Set for readers, and for nobody else. */
  expiresAt: string | null;
}

/** The roles someone holds in a project now; none when they have no part in it or there is no such project. */
export async function readHeld(db: Connection, projectId: string, personId: string): Promise<Held> {
  const rows = await db.$queryRaw<{ role: string; confirmed: boolean }[]>`
    select "role", "confirmed_at" is not null as "confirmed" from "membership"
    where "project_id" = ${projectId}::uuid and "person_id" = ${personId}::uuid and ("expires_at" is null or "expires_at" > now())
    order by "role"`;
  return {
    roles: rows.map(({ role }) => Role.parse(role)),
    awaitsConfirmation: rows.some(({ role, confirmed }) => role === "engineer" && !confirmed),
  };
}

export async function insertMembership(tx: Connection, membership: NewMembership): Promise<void> {
  await tx.membership.create({ data: membership });
}

/** True when there was such a part and it is taken away. */
export async function deleteMembership(
  tx: Connection,
  projectId: string,
  personId: string,
  role: Role,
): Promise<boolean> {
  return (await tx.membership.deleteMany({ where: { projectId, personId, role } })).count > 0;
}

/** True when there is an engineer whom this confirmed just now. */
export async function confirmEngineer(
  tx: Connection,
  projectId: string,
  personId: string,
  at: string,
): Promise<boolean> {
  const where = { projectId, personId, role: "engineer", confirmedAt: null };
  return (await tx.membership.updateMany({ where, data: { confirmedAt: at } })).count > 0;
}

/** True when there is a reader whose part ends then. */
export async function setExpiry(tx: Connection, projectId: string, personId: string, at: string): Promise<boolean> {
  const where = { projectId, personId, role: "reader" };
  return (await tx.membership.updateMany({ where, data: { expiresAt: at } })).count > 0;
}

export const countHolders = (db: Connection, projectId: string, role: Role): Promise<number> =>
  db.membership.count({ where: { projectId, role } });

/** Parts whose time is over and that are still there. */
export const readExpired = (db: Connection): Promise<{ projectId: string; personId: string }[]> =>
  db.membership.findMany({
    where: { expiresAt: { lte: new Date() } },
    select: { projectId: true, personId: true },
    take: 100,
  });

/** A person whose part as reader is over and is taken away by this; null when it is not, or not any more. */
export async function deleteExpired(
  tx: Connection,
  projectId: string,
  personId: string,
): Promise<{ name: string; byLink: boolean } | null> {
  const rows = await tx.$queryRaw<{ name: string; byLink: boolean }[]>`
    with gone as (
      delete from "membership" where "project_id" = ${projectId}::uuid and "person_id" = ${personId}::uuid and "expires_at" <= now()
      returning "person_id"
    ) select p."name", p."by_link" as "byLink" from gone join "person" p on p."id" = gone."person_id"`;
  return rows[0] ?? null;
}

/** The engineer's parts of a project: how many the owner confirmed, and since when the last one waits to be. */
export interface EngineersHeld {
  confirmed: number;
  waitingSince: string | null;
}

export async function readEngineers(db: Connection, projectId: string): Promise<EngineersHeld> {
  const rows = await db.membership.findMany({
    where: { projectId, role: "engineer" },
    select: { since: true, confirmedAt: true },
    orderBy: { since: "asc" },
  });
  return {
    confirmed: rows.filter(({ confirmedAt }) => confirmedAt !== null).length,
    waitingSince: rows.findLast(({ confirmedAt }) => confirmedAt === null)?.since.toISOString() ?? null,
  };
}

/** Roles in which someone has acted in a project, whether they hold them still or not. */
export async function readActedRoles(db: Connection, projectId: string, personId: string): Promise<string[]> {
  const rows = await db.$queryRaw<{ role: string }[]>`
    select distinct "actor_role" as "role" from "record_entry"
    where "project_id" = ${projectId}::uuid and "actor_id" = ${personId}::uuid and "kind" <> 'role given'`;
  return rows.map(({ role }) => role);
}

/** Everyone who has a part in a project now, each once with all their parts, by name; without those who read by a link. */
export async function readProjectMembers(db: Connection, projectId: string): Promise<ProjectMember[]> {
  const rows = await db.membership.findMany({
    where: { projectId, person: { byLink: false }, OR: [{ expiresAt: null }, { expiresAt: { gt: new Date() } }] },
    include: { person: { select: { name: true, email: true, licenceNumber: true, licenceJurisdiction: true } } },
    orderBy: [{ person: { name: "asc" } }, { personId: "asc" }, { role: "asc" }],
  });
  const members = new Map<string, ProjectMember>();
  for (const { personId, person, ...part } of rows) {
    const { name, email } = person;
    const member = members.get(personId) ?? { id: personId, name, email, licence: licenceOf(person), parts: [] };
    member.parts.push(partOf(part));
    members.set(personId, member);
  }
  return [...members.values()];
}

const partOf = (row: { role: string; since: Date; confirmedAt: Date | null; expiresAt: Date | null }): HeldPart => ({
  role: Role.parse(row.role),
  since: row.since.toISOString(),
  confirmedAt: row.confirmedAt?.toISOString() ?? null,
  expiresAt: row.expiresAt?.toISOString() ?? null,
});

export const licenceOf = (row: { licenceNumber: string | null; licenceJurisdiction: string | null }): Licence | null =>
  row.licenceNumber === null || row.licenceJurisdiction === null
    ? null
    : { number: row.licenceNumber, jurisdiction: row.licenceJurisdiction };
