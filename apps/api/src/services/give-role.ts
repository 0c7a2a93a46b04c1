import type { Actor, Role } from "@cornerway/schema";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import { insertMembership } from "../store/membership-rows.ts";
import type { Person } from "../store/person-rows.ts";

export interface GivenRole {
  person: Person;
  role: Role;
  /** RFC 3339; for readers, and for nobody else. */
  expiresAt: string | null;
  /** True where whoever gives the role is the owner, who so confirms an engineer as well. */
  confirmed: boolean;
  /** Name of whoever asked them in. */
  invitedBy?: string;
}

/** Gives someone a part and writes it down, within the act's own transaction. */
export async function giveRole(tx: Connection, projectId: string, by: Actor, given: GivenRole): Promise<void> {
  const { person, role, expiresAt, confirmed, invitedBy } = given;
  const more = { ...(invitedBy === undefined ? {} : { invitedBy }), ...(expiresAt === null ? {} : { expiresAt }) };
  const { at } = await append(tx, projectId, by, () => ({
    kind: "role given",
    personName: person.name,
    role,
    ...more,
  }));
  const confirmedAt = confirmed && role === "engineer" ? at : null;
  await insertMembership(tx, { projectId, personId: person.id, role, confirmedAt, expiresAt });
}
