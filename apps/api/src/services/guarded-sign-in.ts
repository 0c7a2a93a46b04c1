import type { Session, SignIn } from "@cornerway/schema";
import { refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { countTry, forgetTries } from "../store/rate-windows.ts";
import { signIn } from "./sign-in.ts";

const windowMs = 60_000;
const mostOfOnePairPerMinute = 10;
const mostOfOneSidePerMinute = 100;

/**
 * Sign-in with its tries counted for all processes together: few for one address from one place, more for one address
 * from anywhere and for one place over all addresses. A right password clears the first count.
 */
export async function guardedSignIn(
  db: Connection,
  given: SignIn,
  from: { ip: string; before: string | undefined },
): Promise<Outcome<{ token: string; session: Session }>> {
  const email = given.email.toLowerCase();
  const pair = `sign-in ${email} from ${from.ip}`;
  const tries = await countTry(db, pair, windowMs);
  const ofEmail = await countTry(db, `sign-in ${email}`, windowMs);
  const ofPlace = await countTry(db, `sign-in from ${from.ip}`, windowMs);
  if (tries > mostOfOnePairPerMinute || Math.max(ofEmail, ofPlace) > mostOfOneSidePerMinute)
    return refuse("too-many-tries");
  const outcome = await signIn(db, given, from.before);
  if (outcome.ok) await forgetTries(db, pair);
  return outcome;
}
