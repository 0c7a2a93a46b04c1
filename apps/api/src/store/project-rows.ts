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

/** Projects someone has a part in, by name. */
export async function readProjectIds(db: Connection, personId: string): Promise<string[]> {
  const rows = await db.project.findMany({
    where: { memberships: { some: { personId, OR: notOver() } } },
    orderBy: [{ name: "asc" }, { id: "asc" }],
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}

export const readProjectRow = (db: Connection, id: string) =>
  db.project.findUniqueOrThrow({
    where: { id },
    select: { id: true, name: true, place: true, client: true, openedAt: true, last: true },
  });

/** Everyone who has a part in a project, each once with all their roles, by name. */
export async function readMembers(db: Connection, projectId: string): Promise<Member[]> {
  const rows = await db.membership.findMany({
    where: { projectId, OR: notOver() },
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
