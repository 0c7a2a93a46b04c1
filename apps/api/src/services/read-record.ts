import { mayReadEntry, recordKinds, type RecordKind, type Role } from "@cornerway/schema";
import type { Database } from "../store/database.ts";
import { keepEntryText, keptEntryText } from "../store/kept-entries.ts";
import { readEntries } from "../store/record-rows.ts";
import { pageOf, type Page } from "./page.ts";

/** One entry as it is sent. */
export interface EntryToSend {
  number: number;
  /** Changes when the entry reads otherwise: never, but that its payload may be withheld. */
  tag: string;
  /** A `RecordEntry` as JSON. */
  text: string;
}

/** Entries of a record after a number, less those the reader's roles may not see. */
export async function readRecord(
  { reads, connection }: Database,
  { projectId, roles }: { projectId: string; roles: readonly Role[] },
  { after, limit }: { after: number; limit: number },
): Promise<Page<EntryToSend>> {
  const asked = { after, limit: limit + 1, kinds: kindsFor(roles) };
  const heads = await reads.entryHeads(projectId, asked);
  const kept = heads.flatMap((head) => keptEntryText(head) ?? []);
  const read =
    kept.length === heads.length ? kept : (await readEntries(connection, projectId, asked)).map(keepEntryText);
  return pageOf(read, limit, ({ number }) => number);
}

const kindsFor = (roles: readonly Role[]): RecordKind[] => recordKinds.filter((kind) => mayReadEntry(roles, kind));
