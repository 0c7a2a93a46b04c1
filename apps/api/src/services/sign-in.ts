import { createHash, createHmac, randomBytes } from "node:crypto";
import type { Session, SignIn } from "@cornerway/schema";
import { hash, verify } from "@node-rs/argon2";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { findPerson, type Person } from "../store/person-rows.ts";
import { deleteSession, insertSession } from "../store/session-rows.ts";

export const sessionLastsMs = 12 * 3_600_000;

/** Argon2id, 19 MiB, 2 passes, 1 lane: the first choice of the OWASP password storage cheat sheet (from memory). */
export const hashPassword = (password: string): Promise<string> =>
  hash(password, { memoryCost: 19_456, timeCost: 2, parallelism: 1 });

/** Verified for an unknown address, so that the time of the answer does not say whether an address is known. */
const nobodysHash = hashPassword(randomBytes(32).toString("hex"));

/** Opens a session. `before` is the session the same browser held until now, which ends. */
export async function signIn(
  db: Connection,
  { email, password }: SignIn,
  before: string | undefined,
): Promise<Outcome<{ token: string; session: Session }>> {
  const person = await findPerson(db, email);
  const right = await verify(person?.passwordHash ?? (await nobodysHash), password);
  if (person === null || !right) return refuse("sign-in-refused");
  if (before !== undefined) await deleteSession(db, sessionIdOf(before));
  const token = randomBytes(32).toString("base64url");
  await insertSession(db, sessionIdOf(token), person.id, sessionLastsMs);
  return done({ token, session: sessionOf(person, token) });
}

/** What is kept of a session's token. */
export const sessionIdOf = (token: string): string => createHash("sha256").update(token).digest("hex");

/** Bound to the session, so that it needs no store and a token of another session is no use. */
export const csrfTokenOf = (token: string): string => createHmac("sha256", token).update("csrf").digest("base64url");

export const sessionOf = ({ id, name, email }: Person, token: string): Session => ({
  person: { id, name, email },
  csrfToken: csrfTokenOf(token),
});
