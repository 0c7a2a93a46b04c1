import { emptyScheme, type Author, type Role } from "@cornerway/schema";
import { done, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import type { Person } from "../store/person-rows.ts";
import { insertMembership, insertProject, type NewProject } from "../store/new-project.ts";
import { digestOfScheme } from "../store/digest-of-scheme.ts";

/**
 * Opens a project with an empty draft and gives everyone their part; the owner is the actor of all of it. The
 * service's database role may not do this: it runs on the owner role's connection.
 */
export function openProject(
  database: Database,
  project: NewProject,
  members: readonly { person: Person; role: Role }[],
): Promise<Outcome<string>> {
  return database.act(project.id, async (tx) => {
    await insertProject(tx, project, { number: 0, contentDigest: digestOfScheme(emptyScheme), scheme: emptyScheme });
    const owner = ownerOf(members);
    await append(tx, project.id, owner, () => ({ kind: "project opened", name: project.name }));
    for (const { person, role } of members) await giveRole(tx, project.id, owner, { person, role });
    return done(project.id);
  });
}

async function giveRole(
  tx: Connection,
  projectId: string,
  by: Author,
  { person, role }: { person: Person; role: Role },
): Promise<void> {
  await insertMembership(tx, { projectId, personId: person.id, role });
  await append(tx, projectId, by, () => ({ kind: "role given", personName: person.name, role }));
}

function ownerOf(members: readonly { person: Person; role: Role }[]): Author {
  const owner = members.find(({ role }) => role === "owner");
  if (owner === undefined) throw new Error("openProject: a project has an owner");
  return { id: owner.person.id, name: owner.person.name, role: "owner" };
}
