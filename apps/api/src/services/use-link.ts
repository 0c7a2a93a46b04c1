import { randomUUID } from "node:crypto";
import type { UseLink } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { closeFirstLinks, closeLink, closeLinksOf, findByTicket, type Link } from "../store/link-rows.ts";
import {
  becomeFirstAdministrator,
  findPerson,
  findPersonById,
  insertPerson,
  updatePasswordHash,
} from "../store/person-rows.ts";
import { deleteSessionsOf, type SignedInPerson } from "../store/session-rows.ts";
import { refuseRole } from "./exclusion.ts";
import { comeToRead } from "./reader-link/come-to-read.ts";
import { giveRole } from "./give-role.ts";
import { guardedPassword } from "./guarded-sign-in.ts";
import { hashPassword, refusePassword } from "./passwords.ts";
import { secretHash } from "./secret.ts";
import type { From } from "./sign-in.ts";

type Invitation = Extract<Link, { kind: "invitation" }>;
type By<As extends UseLink["as"]> = Extract<UseLink, { as: As }>;

export interface Used {
  person: SignedInPerson;
  /** The project they joined. */
  projectId: string | null;
}

/** Uses the link of a ticket, once and for all. Refused, nothing is written and the link is as good as before. */
export async function useLink(
  database: Database,
  ticket: string | undefined,
  body: UseLink,
  from: From & { person: SignedInPerson | undefined },
): Promise<Outcome<Used>> {
  const db = database.connection;
  const link = ticket === undefined ? null : await findByTicket(db, secretHash(ticket));
  if (link === null) return refuse("link-gone");
  if (link.kind === "first-administrator" && body.as === "first administrator") return comeFirst(database, link, body);
  if (link.kind === "new-password" && body.as === "new password") return setPassword(database, link, body);
  if (link.kind === "reader-link" && body.as === "reader") return comeToRead(database, link, from.person);
  if (link.kind !== "invitation") return wrongUse;
  switch (body.as) {
    case "new person":
      return comeNew(database, link, body);
    case "known person": {
      const known = await guardedPassword(db, { email: link.email, password: body.password }, from.ip);
      return known.ok ? join(database, link, known.value) : known;
    }
    case "signed in":
      return from.person?.email === link.email ? join(database, link, from.person) : wrongUse;
    default:
      return wrongUse;
  }
}

const wrongUse = refuseField("body-invalid", "/as", "this link is not used that way");

async function comeNew(database: Database, link: Invitation, body: By<"new person">): Promise<Outcome<Used>> {
  const { email } = link;
  const refused = refusePassword(body.password, { name: body.name, email }, "/password");
  if (refused !== undefined) return refused;
  if ((await findPerson(database.connection, email)) !== null) return wrongUse;
  const passwordHash = await hashPassword(body.password);
  const person = { id: randomUUID(), name: body.name.trim(), email, administrator: false, byLink: false };
  return join(database, link, person, (tx) => insertPerson(tx, { ...person, passwordHash }));
}

/** Gives whoever is invited their part; `makePerson` runs in the same transaction and is false where they are known by now. */
function join(
  database: Database,
  { id: linkId, projectId, role, partEndsAt, madeBy }: Invitation,
  { id, name, email, administrator, byLink }: SignedInPerson,
  makePerson: (tx: Connection) => Promise<boolean> = async () => true,
): Promise<Outcome<Used>> {
  const person = { id, name, email, administrator, byLink };
  return database.act(projectId, async (tx) => {
    if (!(await closeLink(tx, linkId))) return refuse("link-gone");
    const refused = await refuseRole(tx, projectId, id, role);
    if (refused !== undefined) return refused;
    if (!(await makePerson(tx))) return wrongUse;
    const expiresAt = partEndsAt?.toISOString() ?? null;
    const given = { person, role, expiresAt, confirmed: false, invitedBy: madeBy.name };
    await giveRole(tx, projectId, { id, name, role }, given);
    return done({ person, projectId });
  });
}

async function comeFirst(
  database: Database,
  link: Link,
  { name, email, password }: By<"first administrator">,
): Promise<Outcome<Used>> {
  const refused = refusePassword(password, { name, email }, "/password");
  if (refused !== undefined) return refused;
  const passwordHash = await hashPassword(password);
  const person = {
    id: randomUUID(),
    name: name.trim(),
    email: email.toLowerCase(),
    administrator: true,
    byLink: false,
  };
  return database.write(async (tx) => {
    if (!(await closeLink(tx, link.id))) return refuse("link-gone");
    await closeFirstLinks(tx);
    if (!(await insertPerson(tx, { ...person, passwordHash }))) return refuse("link-gone");
    return (await becomeFirstAdministrator(tx, person.id)) ? done({ person, projectId: null }) : refuse("link-gone");
  });
}

/** A new password ends every session of its owner, and every other link that could set one. */
async function setPassword(
  database: Database,
  link: Extract<Link, { kind: "new-password" }>,
  { password }: By<"new password">,
): Promise<Outcome<Used>> {
  const account = await findPersonById(database.connection, link.personId);
  if (account === null) return refuse("link-gone");
  const refused = refusePassword(password, account, "/password");
  if (refused !== undefined) return refused;
  const passwordHash = await hashPassword(password);
  const { id, name, email, administrator, byLink } = account;
  return database.write(async (tx) => {
    if (!(await closeLink(tx, link.id))) return refuse("link-gone");
    await updatePasswordHash(tx, id, passwordHash);
    await closeLinksOf(tx, id);
    await deleteSessionsOf(tx, id);
    return done({ person: { id, name, email, administrator, byLink }, projectId: null });
  });
}
