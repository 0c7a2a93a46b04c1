import type { ProjectMember, ProjectPeople } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readInvitations } from "../store/link-rows.ts";
import { readHeld, readProjectMembers } from "../store/membership-rows.ts";
import { readProjectRow } from "../store/project-rows.ts";
import { readReaderLinks } from "../store/reader-link-rows.ts";
import type { SignedInPerson } from "../store/session-rows.ts";
import { pageOf, type Page } from "./page.ts";
import { actsOf } from "./part.ts";

/** Who has a part in a project; addresses and invitations only for those who ask people in. */
export async function readPeople(db: Connection, projectId: string, person: SignedInPerson): Promise<ProjectPeople> {
  const { id, name, place } = await readProjectRow(db, projectId);
  const held = actsOf(await readHeld(db, projectId, person.id), person.administrator);
  const acts = person.byLink ? held.filter((act) => act.startsWith("read-")) : held;
  const members = await readProjectMembers(db, projectId);
  const invites = acts.includes("invite");
  return {
    project: { id, name, place },
    members: invites ? members : members.map((member) => ({ ...member, email: null })),
    invitations: invites ? await readInvitations(db, projectId) : [],
    readerLinks: invites ? await readReaderLinks(db, projectId) : [],
    acts,
  };
}

/** The same members in pages, by name; null when there is none to come after. */
export async function readMemberPage(
  db: Connection,
  projectId: string,
  person: SignedInPerson,
  { after, limit }: { after?: string | undefined; limit: number },
): Promise<Page<ProjectMember> | null> {
  const { members } = await readPeople(db, projectId, person);
  const before = after === undefined ? -1 : members.findIndex(({ id }) => id === after);
  if (after !== undefined && before === -1) return null;
  return pageOf(members.slice(before + 1), limit, ({ id }) => id);
}
