import type { Query, QueryClient } from "@tanstack/react-query";
import { Session } from "@cornerway/schema";
import { keepDb } from "./keep-db.ts";
import { sessionKey } from "./session.ts";

/** What a page needs to open while the line is down; the record is long and is read with the line. */
const keptKinds = new Set(["session", "projects", "project"]);
const isKept = ({ queryKey }: Pick<Query, "queryKey">): boolean =>
  typeof queryKey[0] === "string" && keptKinds.has(queryKey[0]) && !queryKey.includes("record");

/** Keeps the last answer of each question that opens a sheet, for the person who asked. */
export function keepAnswer(client: QueryClient, query: Query<unknown, unknown>): void {
  if (!isKept(query)) return;
  const key = keyOf(client, query);
  if (query.state.data == null) return forgetAnswer(key);
  // Nothing is told of a browser that keeps nothing: with the line up the page does not need it.
  if (key !== null) void keepDb.put(key, withoutToken(query)).catch(() => undefined);
}

/** Nobody is signed in any more: then nobody is when the page opens without a line either. */
function forgetAnswer(key: string | null): void {
  if (key !== null) void keepDb.remove(key).catch(() => undefined);
}

/** With the line down and nothing read yet, the last answer stands in. */
export async function standIn(client: QueryClient, query: Query<unknown, unknown>): Promise<void> {
  if (!isKept(query) || query.state.data !== undefined) return;
  const key = keyOf(client, query);
  const kept = key === null ? undefined : await keepDb.get(key).catch(() => undefined);
  if (kept !== undefined && query.state.data === undefined) client.setQueryData(query.queryKey, kept, { updatedAt: 1 });
}

function keyOf(client: QueryClient, { queryKey, queryHash }: Query<unknown, unknown>): string | null {
  if (queryKey[0] === sessionKey[0]) return "answer session";
  const personId = client.getQueryData<Session | null>(sessionKey)?.person.id;
  return personId === undefined ? null : `answer ${personId} ${queryHash}`;
}

/** The token of a sign-in is not written down; a page opened without the line asks for a new one. */
function withoutToken({ queryKey, state }: Query<unknown, unknown>): unknown {
  if (queryKey[0] !== sessionKey[0]) return state.data;
  const session = Session.safeParse(state.data);
  return session.success ? { ...session.data, csrfToken: "" } : state.data;
}
