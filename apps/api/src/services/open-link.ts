import type { OpenedLink } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { findByTicket, takeTicket, type Link } from "../store/link-rows.ts";
import { findPerson, findPersonById } from "../store/person-rows.ts";
import { readProjectRow } from "../store/project-rows.ts";
import { countTry } from "../store/rate-windows.ts";
import type { SignedInPerson } from "../store/session-rows.ts";
import { newSecret, secretHash } from "./secret.ts";

/** How long a browser that has opened a link may take to use it. */
export const ticketLastsMs = 30 * 60_000;
const mostOfOnePlacePerMinute = 30;

/**
 * Takes the secret of an address for a ticket, which goes into a cookie. The link stays good until it is used, so that
 * whoever closes the page can open it again; the ticket given before then ends.
 */
export async function openLink(
  db: Connection,
  secret: string,
  { ip, person }: { ip: string; person: SignedInPerson | undefined },
): Promise<Outcome<{ ticket: string; link: OpenedLink }>> {
  if ((await countTry(db, `links from ${ip}`, 60_000)) > mostOfOnePlacePerMinute) return refuse("too-many-tries");
  const ticket = newSecret();
  const ticketExpiresAt = new Date(Date.now() + ticketLastsMs);
  const link = await takeTicket(db, secretHash(secret), { ticketHash: secretHash(ticket), ticketExpiresAt });
  const told = link && (await tell(db, link, person));
  return told === null ? refuse("link-gone") : done({ ticket, link: told });
}

/** What the link of a ticket is for. */
export async function readLink(
  db: Connection,
  ticket: string | undefined,
  person: SignedInPerson | undefined,
): Promise<Outcome<OpenedLink>> {
  const link = ticket === undefined ? null : await findByTicket(db, secretHash(ticket));
  const told = link && (await tell(db, link, person));
  return told === null ? refuse("link-gone") : done(told);
}

async function tell(db: Connection, link: Link, person: SignedInPerson | undefined): Promise<OpenedLink | null> {
  switch (link.kind) {
    case "first-administrator":
      return { kind: link.kind };
    case "reader-link": {
      const reader = await findPersonById(db, link.personId);
      if (reader === null) return null;
      const { name: projectName } = await readProjectRow(db, link.projectId);
      const expiresAt = link.expiresAt.toISOString();
      const signedInAs = person === undefined || person.id === reader.id ? null : person.name;
      return { kind: link.kind, projectName, name: reader.name, madeBy: link.madeBy.name, expiresAt, signedInAs };
    }
    case "new-password": {
      const whose = await findPersonById(db, link.personId);
      return whose && { kind: link.kind, email: whose.email, name: whose.name };
    }
    case "invitation": {
      const { email, role, madeBy } = link;
      const { name: projectName } = await readProjectRow(db, link.projectId);
      const known = (await findPerson(db, email)) === null ? "none" : "known";
      const account = person?.email === email ? "signed-in" : known;
      return { kind: link.kind, email, projectName, role, invitedBy: madeBy.name, account };
    }
  }
}
