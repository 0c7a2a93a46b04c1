import type { Actor, Role } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { closeInvitationsOf } from "../store/link-rows.ts";
import {
  confirmEngineer as confirmRow,
  countHolders,
  deleteMembership,
  setExpiry as setExpiryRow,
} from "../store/membership-rows.ts";
import { findPersonById, readLicence } from "../store/person-rows.ts";
import { findReaders } from "../store/reader-link-rows.ts";
import { actOf } from "./act-of.ts";
import { refuseEnd } from "./invite.ts";
import { actorOf, authorAs, authorOf, type Part } from "./part.ts";
import { endReading } from "./reader-link/end-reading.ts";

/** The owner says who the engineer is; nobody says so of themselves. */
export function confirmEngineer(database: Database, sender: Part, personId: string): Promise<Outcome<null>> {
  const { projectId } = sender;
  return actOf(database, sender, "confirm-engineer", async (tx, part) => {
    if (personId === part.person.id) return refuse("role-refused", { detail: "another owner confirms you" });
    const person = await findPersonById(tx, personId);
    if (person === null || !(await confirmRow(tx, projectId, personId, new Date().toISOString())))
      return refuse("not-found");
    const licence = await readLicence(tx, personId);
    const of = { personId, personName: person.name, role: "engineer" as const };
    await append(tx, projectId, authorOf(part, "confirm-engineer"), () => ({ kind: "role confirmed", ...of, licence }));
    return done(null);
  });
}

/** Takes a part away. */
export const removePart = (database: Database, sender: Part, personId: string, role: Role): Promise<Outcome<null>> =>
  actOf(database, sender, "remove-person", (tx, part) =>
    endPart(tx, part.projectId, { personId, role, by: actorOf(part, "remove-person") }),
  );

/** Lays one's own part down. */
export const leaveProject = (database: Database, sender: Part, role: Role): Promise<Outcome<null>> =>
  actOf(database, sender, "leave-project", (tx, part) =>
    endPart(tx, part.projectId, { personId: part.person.id, role, by: authorAs(part, "leave-project", role) }),
  );

/**
 * Ends a part, never the last owner's; with it goes every invitation that person made, or that waits for them, and every
 * reader's link they made: they know its secret.
 */
async function endPart(
  tx: Connection,
  projectId: string,
  { personId, role, by }: { personId: string; role: Role; by: Actor },
): Promise<Outcome<null>> {
  const person = await findPersonById(tx, personId);
  if (person === null || !(await deleteMembership(tx, projectId, personId, role))) return refuse("not-found");
  if (role === "owner" && (await countHolders(tx, projectId, "owner")) === 0) return refuse("last-owner");
  const of = { personId, personName: person.name, role };
  await append(tx, projectId, by, () => ({ kind: "role removed", ...of }));
  for (const closed of await closeInvitationsOf(tx, projectId, person))
    await append(tx, projectId, by, () => ({ kind: "invitation withdrawn", ...closed }));
  for (const { id } of await findReaders(tx, projectId, { madeBy: personId })) await endReading(tx, projectId, id, by);
  return done(null);
}

/** Says anew when a reader's part ends. */
export function setExpiry(
  database: Database,
  sender: Part,
  personId: string,
  expiresAt: string,
): Promise<Outcome<null>> {
  const { projectId } = sender;
  return actOf(database, sender, "set-expiry", async (tx, part) => {
    const refused = refuseEnd(expiresAt, "/expiresAt");
    if (refused !== undefined) return refused;
    const person = await findPersonById(tx, personId);
    if (person === null || !(await setExpiryRow(tx, projectId, personId, expiresAt))) return refuse("not-found");
    const of = { personId, personName: person.name, role: "reader" as const, expiresAt };
    await append(tx, projectId, actorOf(part, "set-expiry"), () => ({ kind: "expiry set", ...of }));
    return done(null);
  });
}
