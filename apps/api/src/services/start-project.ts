import { randomUUID } from "node:crypto";
import type { ProjectStarted, StartProject } from "@cornerway/schema";
import { done, type Outcome } from "../outcome.ts";
import type { Database } from "../store/database.ts";
import type { Person } from "../store/person-rows.ts";
import type { Repeatable } from "../store/repeatable-rows.ts";
import { openProjectBy } from "./open-project.ts";

/** An administrator opens a project, with or without a part of their own in it. */
export async function startProject(
  database: Database,
  person: Person,
  { ownPart, ...project }: StartProject,
  repeatable: Repeatable | null,
): Promise<Outcome<ProjectStarted>> {
  const by = { id: person.id, name: person.name, role: ownPart ?? ("administrator" as const) };
  const members = ownPart === null ? [] : [{ person, role: ownPart }];
  const opened = await openProjectBy(database, by, { id: randomUUID(), ...project }, members, repeatable);
  return opened.ok ? done({ id: opened.value }) : opened;
}
