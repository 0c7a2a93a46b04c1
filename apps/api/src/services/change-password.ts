import type { PasswordChange } from "@cornerway/schema";
import { done, refuseField, type Outcome } from "../outcome.ts";
import type { Database } from "../store/database.ts";
import { closeLinksOf } from "../store/link-rows.ts";
import { updatePasswordHash } from "../store/person-rows.ts";
import { deleteSessionsOf } from "../store/session-rows.ts";
import { askPasswordAgain } from "./ask-password-again.ts";
import { hashPassword, refusePassword } from "./passwords.ts";

/** Changes a password for whoever knows the present one; every other session ends, and so does every link to set a new one. */
export async function changePassword(
  database: Database,
  { personId, sessionId }: { personId: string; sessionId: string },
  { present, next }: PasswordChange,
): Promise<Outcome<null>> {
  const db = database.connection;
  const known = await askPasswordAgain(db, personId, { password: present, pointer: "/present" });
  if (!known.ok) return known;
  const account = known.value;
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
