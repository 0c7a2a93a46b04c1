import type { SignedInPlace } from "@cornerway/schema";
import type { Connection } from "./connection.ts";
import type { Person } from "./person-rows.ts";

/** A session nothing was heard of for this long is over, whatever else. */
export const idleSeconds = 2 * 3600;
/** Seen is written down no more often than this. */
export const seenEverySeconds = 60;

/** Who is signed in. */
export interface SignedInPerson extends Person {
  administrator: boolean;
  /** True for whoever reads by a link. */
  byLink: boolean;
}

/** Where someone signed in, as far as it is kept. */
export interface SignInPlace {
  agent: string;
  network: string;
}

/** Writes down that a session is in use, unless that was done a moment ago. */
export async function markSeen(db: Connection, id: string): Promise<void> {
  await db.$executeRaw`
    update "session" set "seen_at" = now()
    where "id" = ${id} and "seen_at" < now() - make_interval(secs => ${seenEverySeconds}::float8)`;
}

export async function insertSession(
  db: Connection,
  session: { id: string; personId: string; lastsMs: number } & SignInPlace,
): Promise<void> {
  const { lastsMs, ...row } = session;
  await db.session.create({ data: { ...row, expiresAt: new Date(Date.now() + lastsMs) } });
}

/** Ends a session, and clears away those that have expired. */
export async function deleteSession(db: Connection, id: string): Promise<void> {
  await db.session.deleteMany({ where: { OR: [{ id }, { expiresAt: { lt: new Date() } }] } });
}

/** Ends every session of a person but one, if one is to stay. */
export async function deleteSessionsOf(db: Connection, personId: string, butId?: string): Promise<void> {
  await db.session.deleteMany({ where: { personId, ...(butId === undefined ? {} : { id: { not: butId } }) } });
}

/** Ends one session of a person by its handle; false when they have no such one. */
export async function deleteSessionByHandle(db: Connection, personId: string, handle: string): Promise<boolean> {
  return (await db.session.deleteMany({ where: { personId, handle } })).count > 0;
}

/** The sessions of a person that are good now, the one seen last first. */
export async function readSessions(db: Connection, personId: string, presentId: string): Promise<SignedInPlace[]> {
  const now = Date.now();
  const rows = await db.session.findMany({
    where: { personId, expiresAt: { gt: new Date(now) }, seenAt: { gt: new Date(now - idleSeconds * 1000) } },
    orderBy: { seenAt: "desc" },
  });
  return rows.map(({ id, handle, agent, network, createdAt, seenAt, expiresAt }) => ({
    ...{ id: handle, agent, network, since: createdAt.toISOString(), seenAt: seenAt.toISOString() },
    ...{ endsAt: expiresAt.toISOString(), present: id === presentId },
  }));
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
      and s."seen_at" > now() - make_interval(secs => ${idleSeconds}::float8)
    join "membership" m on m."project_id" = asked."project"::uuid and m."person_id" = s."person_id"
      and (m."expires_at" is null or m."expires_at" > now())
    group by 1, 2`;
}
