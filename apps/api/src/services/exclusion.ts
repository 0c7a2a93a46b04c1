import { rolesExclude, type Role } from "@cornerway/schema";
import { refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readActedRoles, readHeld } from "../store/membership-rows.ts";

/** The refusal of a role for someone who holds it, holds one it excludes, or has acted in one; undefined when they may have it. */
export async function refuseRole(
  db: Connection,
  projectId: string,
  personId: string,
  role: Role,
): Promise<Outcome<never> | undefined> {
  const { roles } = await readHeld(db, projectId, personId);
  if (roles.includes(role)) return refuse("already-in");
  const other = [...roles, ...(await readActedRoles(db, projectId, personId))].find((one) => exclude(one, role));
  return other === undefined ? undefined : refuse("roles-exclude", { detail: `they are or were the ${other} here` });
}

/** True when one person may not have both roles in one project. */
export const exclude = (one: string, other: string): boolean =>
  one !== other &&
  rolesExclude.some((pair) => pair.some((role) => role === one) && pair.some((role) => role === other));
