import type { Connection } from "./connection.ts";
import type { Person } from "./person-rows.ts";

/** Who a session belongs to; null when it is unknown, signed out or expired. */
export async function findSession(db: Connection, id: string): Promise<Person | null> {
  const rows = await db.$queryRaw<Person[]>`
    select p."id"::text, p."name", p."email" from "session" s join "person" p on p."id" = s."person_id"
    where s."id" = ${id} and s."expires_at" > now()`;
  return rows[0] ?? null;
}

export async function insertSession(db: Connection, id: string, personId: string, lastsMs: number): Promise<void> {
  await db.session.create({ data: { id, personId, expiresAt: new Date(Date.now() + lastsMs) } });
}

/** Ends a session, and clears away those that have expired. */
export async function deleteSession(db: Connection, id: string): Promise<void> {
  await db.session.deleteMany({ where: { OR: [{ id }, { expiresAt: { lt: new Date() } }] } });
}

/** Of the given sessions with a project each, those that are still signed in, with the roles held now. */
export async function readStanding(
  db: Connection,
  sessions: readonly { sessionId: string; projectId: string }[],
): Promise<{ sessionId: string; projectId: string; roles: string[] }[]> {
  return db.$queryRaw`
    select asked."session" as "sessionId", asked."project" as "projectId", array_agg(m."role" order by m."role") as "roles"
    from unnest(${sessions.map(({ sessionId }) => sessionId)}::text[], ${sessions.map(({ projectId }) => projectId)}::text[])
      as asked("session", "project")
    join "session" s on s."id" = asked."session" and s."expires_at" > now()
    join "membership" m on m."project_id" = asked."project"::uuid and m."person_id" = s."person_id"
    group by 1, 2`;
}
