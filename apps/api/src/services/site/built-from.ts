import { mostOfThread, SealIssue, type Revision } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readMatters } from "../../store/matter-rows.ts";
import { readRevision, readRevisionHeads } from "../../store/revision-rows.ts";
import { readLatestStamps } from "../../store/stamp-rows.ts";

export interface BuiltFrom {
  revision: Revision;
  by: "issued for seal" | "stamped";
}

const goesOn: ReadonlySet<string> = new Set(["No exceptions taken", "Make corrections noted"]);

/** The newest revision that is issued for seal or stamped, as a whole, so that work goes on; null while there is none. */
export async function builtFrom(db: Connection, projectId: string): Promise<BuiltFrom | null> {
  const issues = await readMatters(db, projectId, "seal issue", SealIssue);
  const issued = new Set(issues.map(({ revision }) => revision));
  // stamps come in the order they were pressed: the last one on a revision counts
  const stamped = new Map<string, string>();
  for (const { elementId, revision, disposition } of await readLatestStamps(db, projectId, mostOfThread))
    if (elementId === undefined) stamped.set(revision, disposition);
  for (const { letter } of await readRevisionHeads(db, projectId)) {
    const by = issued.has(letter) ? "issued for seal" : goesOn.has(stamped.get(letter) ?? "") ? "stamped" : null;
    if (by === null) continue;
    const revision = await readRevision(db, projectId, letter);
    if (revision === null) throw new Error(`builtFrom: there is no revision ${letter}`);
    return { revision, by };
  }
  return null;
}
