import { Check, Confirmation, mayReadEntry, SealIssue, type Revision, type SealState } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readMatters, readPlainMatters } from "../../store/matter-rows.ts";
import { readRevision, readRevisionHeads } from "../../store/revision-rows.ts";
import type { Part } from "../part.ts";
import { Standings } from "../standings.ts";
import { readDispositions } from "./dispositions.ts";
import { readHindrances } from "./hindrances.ts";

const nothing: SealState = {
  ...{ revision: null, hindrances: [], checks: [], dispositions: [], confirmations: [], issues: [] },
};

/** Everything between the newest revision and its seal; nothing for whoever may not see issues. */
export async function readSeal(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
): Promise<SealState> {
  const newest = await readNewest(db, projectId);
  if (newest === null || !mayReadEntry(roles, "issued for seal")) return nothing;
  const standings = new Standings(db, projectId);
  const dispositions = await readDispositions(db, projectId, { standings, newest });
  const checks = await readPlainMatters(db, projectId, "check", Check);
  const issues = await readMatters(db, projectId, "seal issue", SealIssue);
  return {
    revision: newest.letter,
    hindrances: await readHindrances(db, projectId, { newest, dispositions }),
    checks: await Promise.all(checks.map(async (check) => ({ check, standing: await standings.of(null, check) }))),
    dispositions,
    confirmations: await readPlainMatters(db, projectId, "confirmation", Confirmation),
    issues: await Promise.all(issues.map(async (issue) => ({ issue, standing: await standings.of(null, issue) }))),
  };
}

export async function readNewest(db: Connection, projectId: string): Promise<Revision | null> {
  const [head] = await readRevisionHeads(db, projectId);
  return head === undefined ? null : readRevision(db, projectId, head.letter);
}
