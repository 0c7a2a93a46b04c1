import type { PasswordChange } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { Database } from "../store/database.ts";
import { closeLinksOf } from "../store/link-rows.ts";
import { findPersonById, updatePasswordHash } from "../store/person-rows.ts";
import { countTry } from "../store/rate-windows.ts";
import { deleteSessionsOf } from "../store/session-rows.ts";
import { hashPassword, isPassword, refusePassword } from "./passwords.ts";

const mostTriesPerMinute = 10;

/** Changes a password for whoever knows the present one; every other session ends, and so does every link to set a new one. */
export async function changePassword(
  database: Database,
  { personId, sessionId }: { personId: string; sessionId: string },
  { present, next }: PasswordChange,
): Promise<Outcome<null>> {
  const db = database.connection;
  if ((await countTry(db, `present password of ${personId}`, 60_000)) > mostTriesPerMinute)
    return refuse("too-many-tries");
  const account = await findPersonById(db, personId);
  if (account === null || !(await isPassword(account.passwordHash, present)))
    return refuseField("present-password-wrong", "/present", "this is not the present password");
  const refused =
    present === next
      ? refuseField("password-refused", "/next", "It is the present one.")
      : refusePassword(next, account, "/next");
  if (refused !== undefined) return refused;
  const passwordHash = await hashPassword(next);
  return database.write(async (tx) => {
    await updatePasswordHash(tx, personId, passwordHash);
    await closeLinksOf(tx, personId);
    await deleteSessionsOf(tx, personId, sessionId);
    return done(null);
  });
}
