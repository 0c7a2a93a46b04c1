import { mayReadEntry, RecordPayload, type RecordEntry, type RecordKind, type Role } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readEntries } from "../store/record-rows.ts";

/** Entries of a record after a number, less those the reader's roles may not see. */
export const readRecord = (
  db: Connection,
  { projectId, roles }: { projectId: string; roles: readonly Role[] },
  { after, limit }: { after: number; limit: number },
): Promise<RecordEntry[]> => readEntries(db, projectId, { after, limit, kinds: kindsFor(roles) });

const kinds = RecordPayload.options.map((option) => option.shape.kind.value);

const kindsFor = (roles: readonly Role[]): RecordKind[] => kinds.filter((kind) => mayReadEntry(roles, kind));
