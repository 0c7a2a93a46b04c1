import type { Connection } from "./connection.ts";
import type { DraftRow } from "./draft-rows.ts";

export interface NewProject {
  id: string;
  name: string;
  place: string;
  client: string;
}

export async function insertProject(tx: Connection, project: NewProject, draft: DraftRow): Promise<void> {
  await tx.project.create({ data: { ...project, draft: { create: draft } } });
}

export async function projectExists(db: Connection, id: string): Promise<boolean> {
  return (await db.project.count({ where: { id } })) > 0;
}
