import { createHmac } from "node:crypto";
import type { Session, SignIn } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { findPerson, type Account } from "../store/person-rows.ts";
import { deleteSession, insertSession, type SignedInPerson } from "../store/session-rows.ts";
import { networkOf, whichAgent } from "./sign-in-place.ts";
import { isPassword } from "./passwords.ts";
import { newSecret, secretHash } from "./secret.ts";

export const sessionLastsMs = 12 * 3_600_000;

/** From where someone signs in; `before` is the session the same browser held until now. */
export interface From {
  ip: string;
  agent: string | undefined;
  before: string | undefined;
}

export interface OpenSession {
  token: string;
  session: Session;
}

/** Whoever has that address and that password; one answer, after one time, for every other case. */
export async function checkPassword(db: Connection, { email, password }: SignIn): Promise<Outcome<Account>> {
  const person = await findPerson(db, email);
  const right = await isPassword(person?.passwordHash, password);
  return person === null || !right ? refuse("sign-in-refused") : done(person);
}

/** Opens a session for someone who has shown who they are; the one their browser held before ends. */
export async function openSession(db: Connection, person: SignedInPerson, from: From): Promise<OpenSession> {
  if (from.before !== undefined) await deleteSession(db, sessionIdOf(from.before));
  const token = newSecret();
  const place = { agent: whichAgent(from.agent), network: networkOf(from.ip) };
  await insertSession(db, { id: sessionIdOf(token), personId: person.id, lastsMs: sessionLastsMs, ...place });
  return { token, session: sessionOf(person, token) };
}

/** What is kept of a session's token. */
export const sessionIdOf = secretHash;

/** Bound to the session, so that it needs no store and a token of another session is no use. */
export const csrfTokenOf = (token: string): string => createHmac("sha256", token).update("csrf").digest("base64url");

export const sessionOf = ({ id, name, email, administrator, byLink }: SignedInPerson, token: string): Session => ({
  person: { id, name, email, administrator, ...(byLink ? { byLink } : {}) },
  csrfToken: csrfTokenOf(token),
});
