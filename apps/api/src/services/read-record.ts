import { mayReadEntry, recordKinds, type RecordEntry, type RecordKind, type Role } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readEntries } from "../store/record-rows.ts";

/** Entries of a record after a number, less those the reader's roles may not see. */
export const readRecord = (
  db: Connection,
  { projectId, roles }: { projectId: string; roles: readonly Role[] },
  { after, limit }: { after: number; limit: number },
): Promise<RecordEntry[]> => readEntries(db, projectId, { after, limit, kinds: kindsFor(roles) });

const kindsFor = (roles: readonly Role[]): RecordKind[] => recordKinds.filter((kind) => mayReadEntry(roles, kind));
