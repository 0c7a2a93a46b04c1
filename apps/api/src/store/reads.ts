import { Role, type Digest } from "@cornerway/schema";
import type pg from "pg";
import { gather } from "./gather.ts";
import type { Held } from "./membership-rows.ts";
import { idleSeconds, seenEverySeconds, type SignedInPerson } from "./session-rows.ts";

/** Who a session belongs to, with what they hold in the project they ask for. */
export interface FoundSession {
  person: SignedInPerson;
  held: Held;
  /** False as well where no project was asked for. */
  projectThere: boolean;
  /** True when it is time to write down that they were seen. */
  unseen: boolean;
}

export interface DraftHead {
  number: number;
  contentDigest: Digest;
  /** Number of the draft that the last revision was made of; 0 before the first. */
  sentNumber: number;
}

export interface EntryHead {
  number: number;
  head: Digest;
  /** True when the payload is withheld. */
  withheld: boolean;
}

/** What is read at every turn: prepared statements on plain connections, requests of one moment in one query. */
export interface Reads {
  /** Null when the session is unknown, signed out, expired or long unused. */
  session(asked: { sessionId: string; projectId: string | null }): Promise<FoundSession | null>;
  /** Null when there is no such project. */
  draftHead(projectId: string): Promise<DraftHead | null>;
  /** Heads of the entries after a number in order, only of the kinds asked for, at most `limit`. */
  entryHeads(projectId: string, page: { after: number; limit: number; kinds: readonly string[] }): Promise<EntryHead[]>;
}

export function readsOf(pool: pg.Pool): Reads {
  return {
    session: gather(async (asked: readonly { sessionId: string; projectId: string | null }[]) => {
      const values = [asked.map(({ sessionId }) => sessionId), asked.map(({ projectId }) => projectId)];
      const { rows } = await pool.query<SessionRow>({ name: "sessions", text: sessions, values });
      const found = new Map(rows.map((row) => [Number(row.n), foundOf(row)]));
      return asked.map((_, at) => found.get(at + 1) ?? null);
    }),
    draftHead: gather(async (projectIds: readonly string[]) => {
      const query = { name: "draft-heads", text: draftHeads, values: [[...new Set(projectIds)]] };
      const { rows } = await pool.query<DraftHead & { projectId: string }>(query);
      const found = new Map(rows.map(({ projectId, ...head }) => [projectId, head]));
      return projectIds.map((projectId) => found.get(projectId.toLowerCase()) ?? null);
    }),
    async entryHeads(projectId, { after, limit, kinds }) {
      const query = { name: "entry-heads", text: entryHeads, values: [projectId, after, kinds, limit] };
      return (await pool.query<EntryHead>(query)).rows;
    },
  };
}

interface SessionRow extends SignedInPerson {
  n: string;
  unseen: boolean;
  projectThere: boolean;
  roles: string[];
  awaitsConfirmation: boolean;
}

const foundOf = ({ unseen, projectThere, roles, awaitsConfirmation, ...row }: SessionRow) => ({
  person: { id: row.id, name: row.name, email: row.email, administrator: row.administrator, byLink: row.byLink },
  ...{ unseen, projectThere },
  held: { roles: roles.map((role) => Role.parse(role)), awaitsConfirmation },
});

const sessions = `
  select asked."n", p."id"::text, p."name", p."email", p."administrator", p."by_link" as "byLink",
    s."seen_at" < now() - interval '${seenEverySeconds} seconds' as "unseen", project."id" is not null as "projectThere",
    coalesce(held."roles", '{}') as "roles", coalesce(held."waits", false) as "awaitsConfirmation"
  from unnest($1::text[], $2::uuid[]) with ordinality as asked("session", "project", "n")
  join "session" s on s."id" = asked."session" and s."expires_at" > now()
    and s."seen_at" > now() - interval '${idleSeconds} seconds'
  join "person" p on p."id" = s."person_id"
  left join "project" on project."id" = asked."project"
  left join lateral (
    select array_agg(m."role" order by m."role") as "roles", bool_or(m."role" = 'engineer' and m."confirmed_at" is null) as "waits"
    from "membership" m where m."project_id" = asked."project" and m."person_id" = p."id"
      and (m."expires_at" is null or m."expires_at" > now())
  ) held on true`;

const draftHeads = `
  select d."project_id"::text as "projectId", d."number", d."content_digest" as "contentDigest", coalesce((
    select r."draft_number" from "revision" r where r."project_id" = d."project_id" order by r."ordinal" desc limit 1
  ), 0) as "sentNumber"
  from "draft" d where d."project_id" = any($1::uuid[])`;

const entryHeads = `
  select e."number", e."head", p."payload" is null as "withheld"
  from "record_entry" e left join "record_payload" p on p."project_id" = e."project_id" and p."number" = e."number"
  where e."project_id" = $1::uuid and e."number" > $2 and e."kind" = any($3::text[])
  order by e."number" limit $4`;
