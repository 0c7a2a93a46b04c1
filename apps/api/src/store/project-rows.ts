import { type KeptProject, type Member, Role } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

/** A part that has no end, or has not come to it. */
const notOver = () => [{ expiresAt: null }, { expiresAt: { gt: new Date() } }];

/** Every project of the service, by name: for its administrators. */
export async function readKeptProjects(db: Connection): Promise<KeptProject[]> {
  const rows = await db.project.findMany({
    orderBy: [{ name: "asc" }, { id: "asc" }],
    select: { id: true, name: true, place: true, client: true, openedAt: true },
  });
  return rows.map(({ openedAt, ...project }) => ({ ...project, openedAt: openedAt.toISOString() }));
}

/** Projects someone has a part in, by name: those after one of them, at most `limit`; null when there is no such one. */
export async function readProjectIds(
  db: Connection,
  personId: string,
  { after, limit }: { after: string | undefined; limit: number },
): Promise<string[] | null> {
  const theirs = { memberships: { some: { personId, OR: notOver() } } };
  const from = after === undefined ? undefined : await db.project.findFirst({ where: { id: after, ...theirs } });
  if (from === null) return null;
  const later = from && { OR: [{ name: { gt: from.name } }, { name: from.name, id: { gt: from.id } }] };
  const rows = await db.project.findMany({
    where: { ...theirs, ...later },
    orderBy: [{ name: "asc" }, { id: "asc" }],
    select: { id: true },
    take: limit,
  });
  return rows.map(({ id }) => id);
}

export const readProjectRow = (db: Connection, id: string) =>
  db.project.findUniqueOrThrow({
    where: { id },
    select: { id: true, name: true, place: true, client: true, openedAt: true, last: true },
  });

/** Everyone who has a part in a project, each once with all their roles, by name; without those who read by a link. */
export async function readMembers(db: Connection, projectId: string): Promise<Member[]> {
  const rows = await db.membership.findMany({
    where: { projectId, person: { byLink: false }, OR: notOver() },
    include: { person: { select: { name: true } } },
    orderBy: [{ person: { name: "asc" } }, { personId: "asc" }, { role: "asc" }],
  });
  const members = new Map<string, Member>();
  for (const { personId, person, role } of rows) {
    const member = members.get(personId) ?? { id: personId, name: person.name, roles: [] };
    member.roles.push(Role.parse(role));
    members.set(personId, member);
  }
  return [...members.values()];
}
