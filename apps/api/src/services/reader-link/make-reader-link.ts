import { randomUUID } from "node:crypto";
import { linkPages, mostReaderLinks, type NewReaderLink, type ReaderLinkMade } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { insertLink } from "../../store/link-rows.ts";
import { insertMembership } from "../../store/membership-rows.ts";
import { insertLinkReader } from "../../store/person-rows.ts";
import { readReaderLinks } from "../../store/reader-link-rows.ts";
import { actOf } from "../act-of.ts";
import { refuseEnd } from "../invite.ts";
import { actorOf, type Part } from "../part.ts";
import { newSecret, secretHash } from "../secret.ts";

/**
 * Makes a link by which someone without an account reads the project until a day. What they may do and see is a reader's
 * part like any other, held by a person who has no password; the secret is told this once and kept nowhere.
 */
export function makeReaderLink(
  database: Database,
  sender: Part,
  { name, expiresAt }: NewReaderLink,
): Promise<Outcome<ReaderLinkMade>> {
  const { projectId } = sender;
  const secret = newSecret();
  return actOf(database, sender, "invite", async (tx, part) => {
    const refused = refuseEnd(expiresAt, "/expiresAt") ?? (await tooMany(tx, projectId));
    if (refused !== undefined) return refused;
    const personId = randomUUID();
    const madeBy = actorOf(part, "invite");
    await append(tx, projectId, madeBy, () => ({ kind: "reader link made", personId, name, expiresAt }));
    await insertLinkReader(tx, { id: personId, name });
    await insertMembership(tx, { projectId, personId, role: "reader", confirmedAt: null, expiresAt });
    await insertLink(tx, {
      ...{ id: randomUUID(), kind: "reader-link", secretHash: secretHash(secret), projectId, personId, madeBy },
      expiresAt: new Date(expiresAt),
    });
    const link = (await readReaderLinks(tx, projectId)).find(({ id }) => id === personId);
    return link === undefined ? refuse("not-found") : done({ link, path: `${linkPages["reader-link"]}#${secret}` });
  });
}

const tooMany = async (tx: Connection, projectId: string): Promise<Outcome<never> | undefined> =>
  (await readReaderLinks(tx, projectId)).length < mostReaderLinks
    ? undefined
    : refuse("too-many-kept", { detail: `no more than ${mostReaderLinks} readers' links are good at a time` });
