import type { ProjectPeople } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readInvitations } from "../store/link-rows.ts";
import { readHeld, readProjectMembers } from "../store/membership-rows.ts";
import { readProjectRow } from "../store/project-rows.ts";
import type { SignedInPerson } from "../store/session-rows.ts";
import { actsOf } from "./part.ts";

/** Who has a part in a project; addresses and invitations only for those who ask people in. */
export async function readPeople(db: Connection, projectId: string, person: SignedInPerson): Promise<ProjectPeople> {
  const { id, name, place } = await readProjectRow(db, projectId);
  const acts = actsOf(await readHeld(db, projectId, person.id), person.administrator);
  const members = await readProjectMembers(db, projectId);
  const invites = acts.includes("invite");
  return {
    project: { id, name, place },
    members: invites ? members : members.map((member) => ({ ...member, email: null })),
    invitations: invites ? await readInvitations(db, projectId) : [],
    acts,
  };
}
