import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { findPersonById, type Account } from "../store/person-rows.ts";
import { countTry, forgetTries } from "../store/rate-windows.ts";
import { isPassword } from "./passwords.ts";

const mostTriesPerMinute = 10;

/**
 * Someone who is signed in shows once more that it is they, before an act that nobody else may do on their session. Tries
 * are counted for all processes together; a right one clears the count.
 */
export async function askPasswordAgain(
  db: Connection,
  personId: string,
  { password, pointer }: { password: string; pointer: string },
): Promise<Outcome<Account>> {
  const tries = `present password of ${personId}`;
  if ((await countTry(db, tries, 60_000)) > mostTriesPerMinute) return refuse("too-many-tries");
  const account = await findPersonById(db, personId);
  if (account === null || !(await isPassword(account.passwordHash, password)))
    return refuseField("present-password-wrong", pointer, "this is not the present password");
  await forgetTries(db, tries);
  return done(account);
}
