import { mayReadEntry, mostOfThread, type ChangeRequest, type Note, type Thread } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readLatestNotes, readNotesAfter } from "../store/note-rows.ts";
import { readLatestRequests, readRequestsAfter } from "../store/request-rows.ts";
import { readLatestStamps } from "../store/stamp-rows.ts";
import type { Part } from "./part.ts";
import { pageOf, type Page } from "./page.ts";

/** What was last written, asked and decided, less what the record's table of who may see what keeps from the reader. */
export async function readThread(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
  most = mostOfThread,
): Promise<Thread> {
  return {
    notes: mayReadEntry(roles, "note written") ? await readLatestNotes(db, projectId, most) : [],
    requests: mayReadEntry(roles, "request made") ? await readLatestRequests(db, projectId, most) : [],
    stamps: mayReadEntry(roles, "stamp pressed") ? await readLatestStamps(db, projectId, most) : [],
  };
}

/** Notes in the order they were written, less all of them for whoever may see none; null when there is none to come after. */
export async function readNotePage(
  db: Connection,
  { projectId, roles }: Part,
  { after, limit }: { after?: string | undefined; limit: number },
): Promise<Page<Note> | null> {
  if (!mayReadEntry(roles, "note written")) return { items: [], next: null };
  const read = await readNotesAfter(db, projectId, { after, limit: limit + 1 });
  return read && pageOf(read, limit, ({ id }) => id);
}

/** Change requests in the order of their numbers, less all of them for whoever may see none. */
export async function readRequestPage(
  db: Connection,
  { projectId, roles }: Part,
  { after, limit }: { after: number; limit: number },
): Promise<Page<ChangeRequest>> {
  if (!mayReadEntry(roles, "request made")) return { items: [], next: null };
  const read = await readRequestsAfter(db, projectId, { after, limit: limit + 1 });
  return pageOf(read, limit, ({ number }) => number);
}
