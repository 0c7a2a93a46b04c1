import type { SignIn } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { countTry, forgetTries } from "../store/rate-windows.ts";
import type { Account } from "../store/person-rows.ts";
import { checkPassword, openSession, type From, type OpenSession } from "./sign-in.ts";

const windowMs = 60_000;
const mostOfOnePairPerMinute = 10;
const mostOfOneSidePerMinute = 100;

export async function guardedSignIn(db: Connection, given: SignIn, from: From): Promise<Outcome<OpenSession>> {
  const known = await guardedPassword(db, given, from.ip);
  return known.ok ? done(await openSession(db, known.value, from)) : known;
}

/**
 * A password tried, with the tries counted for all processes together: few for one address from one place, more for one
 * address from anywhere and for one place over all addresses. A right password clears the first count.
 */
export async function guardedPassword(db: Connection, given: SignIn, ip: string): Promise<Outcome<Account>> {
  const email = given.email.toLowerCase();
  const pair = `sign-in ${email} from ${ip}`;
  const tries = await countTry(db, pair, windowMs);
  const ofEmail = await countTry(db, `sign-in ${email}`, windowMs);
  const ofPlace = await countTry(db, `sign-in from ${ip}`, windowMs);
  if (tries > mostOfOnePairPerMinute || Math.max(ofEmail, ofPlace) > mostOfOneSidePerMinute)
    return refuse("too-many-tries");
  const outcome = await checkPassword(db, given);
  if (outcome.ok) await forgetTries(db, pair);
  return outcome;
}
