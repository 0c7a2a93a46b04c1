import { Role } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

export interface Person {
  id: string;
  name: string;
  email: string;
}

/** Someone by the address they sign in with, in any case, with the hash of their password. */
export const findPerson = (db: Connection, email: string): Promise<(Person & { passwordHash: string }) | null> =>
  db.person.findUnique({
    where: { email: email.toLowerCase() },
    select: { id: true, name: true, email: true, passwordHash: true },
  });

/** The roles someone holds in a project; none when they have no part in it or there is no such project. */
export async function readRoles(db: Connection, projectId: string, personId: string): Promise<Role[]> {
  const rows = await db.$queryRaw<{ role: string }[]>`
    select "role" from "membership" where "project_id" = ${projectId}::uuid and "person_id" = ${personId}::uuid order by "role"`;
  return rows.map(({ role }) => Role.parse(role));
}
