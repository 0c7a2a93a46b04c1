import type { Role } from "@cornerway/schema";
import type { Connection } from "./connection.ts";
import type { DraftRow } from "./draft-rows.ts";
import type { Person } from "./person-rows.ts";

export interface NewProject {
  id: string;
  name: string;
  place: string;
  client: string;
}

export async function insertProject(tx: Connection, project: NewProject, draft: DraftRow): Promise<void> {
  await tx.project.create({ data: { ...project, draft: { create: draft } } });
}

export async function insertMembership(
  tx: Connection,
  membership: { projectId: string; personId: string; role: Role },
): Promise<void> {
  await tx.membership.create({ data: membership });
}

export async function insertPerson(tx: Connection, person: Person & { passwordHash: string }): Promise<void> {
  await tx.person.create({ data: person });
}

export async function projectExists(db: Connection, id: string): Promise<boolean> {
  return (await db.project.count({ where: { id } })) > 0;
}
