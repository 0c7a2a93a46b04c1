import { emptyScheme, ProjectId, usualReadingDays, type Actor, type Role } from "@cornerway/schema";
import { done, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import type { Person } from "../store/person-rows.ts";
import { digestOfScheme } from "../store/digest-of-scheme.ts";
import { insertProject, type NewProject } from "../store/new-project.ts";
import type { Repeatable } from "../store/repeatable-rows.ts";
import { giveRole } from "./give-role.ts";
import { once } from "./once.ts";

const dayMs = 86_400_000;

/** Opens a project with an empty draft and gives everyone their part; the owner is the actor of all of it. */
export function openProject(
  database: Database,
  project: NewProject,
  members: readonly { person: Person; role: Role }[],
): Promise<Outcome<string>> {
  return openProjectBy(database, ownerOf(members), project, members);
}

/** The same with whoever opens it named apart. Where that is the owner, the engineer is confirmed with it. */
export function openProjectBy(
  database: Database,
  by: Actor,
  project: NewProject,
  members: readonly { person: Person; role: Role }[],
  repeatable: Repeatable | null = null,
): Promise<Outcome<string>> {
  return database.act(project.id, (tx) =>
    once(tx, repeatable, { shape: ProjectId }, async () => {
      await insertProject(tx, project, { number: 0, contentDigest: digestOfScheme(emptyScheme), scheme: emptyScheme });
      await append(tx, project.id, by, () => ({ kind: "project opened", name: project.name }));
      await giveRoles(tx, project.id, by, members);
      return done(project.id);
    }),
  );
}

async function giveRoles(
  tx: Connection,
  projectId: string,
  by: Actor,
  members: readonly { person: Person; role: Role }[],
): Promise<void> {
  const readUntil = new Date(Date.now() + usualReadingDays * dayMs).toISOString();
  for (const member of members) {
    const expiresAt = member.role === "reader" ? readUntil : null;
    await giveRole(tx, projectId, by, { ...member, expiresAt, confirmed: by.role === "owner" });
  }
}

function ownerOf(members: readonly { person: Person; role: Role }[]): Actor {
  const owner = members.find(({ role }) => role === "owner");
  if (owner === undefined) throw new Error("openProject: a project has an owner");
  return { id: owner.person.id, name: owner.person.name, role: "owner" };
}
