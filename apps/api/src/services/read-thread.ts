import { mayReadEntry, type Thread } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readNotes } from "../store/note-rows.ts";
import { readRequests } from "../store/request-rows.ts";
import { readStamps } from "../store/stamp-rows.ts";
import type { Part } from "./part.ts";

/** What was written, asked and decided, less what the record's table of who may see what keeps from the reader. */
export async function readThread(db: Connection, { projectId, roles }: Part): Promise<Thread> {
  return {
    notes: mayReadEntry(roles, "note written") ? await readNotes(db, projectId) : [],
    requests: mayReadEntry(roles, "request made") ? await readRequests(db, projectId) : [],
    stamps: mayReadEntry(roles, "stamp pressed") ? await readStamps(db, projectId) : [],
  };
}
