import { randomUUID } from "node:crypto";
import { linkPages } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { insertLink } from "../store/link-rows.ts";
import { findPerson, type Person } from "../store/person-rows.ts";
import { countTry } from "../store/rate-windows.ts";
import { newSecret, secretHash } from "./secret.ts";

const linkLastsMs = 3_600_000;
const mostOfOneAddressPerHour = 5;
const mostOfOnePlacePerHour = 60;

/** Counts who asks for a new password, before anything is looked up, so that the answer says nothing of any account. */
export async function countAsking(db: Connection, email: string, ip: string): Promise<Outcome<null>> {
  const ofAddress = await countTry(db, `new password for ${email.toLowerCase()}`, linkLastsMs);
  const ofPlace = await countTry(db, `new password from ${ip}`, linkLastsMs);
  return ofAddress > mostOfOneAddressPerHour || ofPlace > mostOfOnePlacePerHour ? refuse("too-many-tries") : done(null);
}

/** Makes a link to set a new password; null where nobody has that address. Those made before stay good until one is used. */
export async function makePasswordLink(
  db: Connection,
  email: string,
): Promise<{ person: Person; path: string } | null> {
  const person = await findPerson(db, email);
  if (person === null) return null;
  const secret = newSecret();
  const expiresAt = new Date(Date.now() + linkLastsMs);
  await insertLink(db, {
    ...{ id: randomUUID(), kind: "new-password", secretHash: secretHash(secret), personId: person.id, expiresAt },
  });
  return { person, path: `${linkPages["new-password"]}#${secret}` };
}
