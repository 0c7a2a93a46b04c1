import type { DecisionShown } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readCostBook } from "../store/cost-book-rows.ts";
import { readLatestDecisions } from "../store/decision-rows.ts";
import { readRevisionHeads } from "../store/revision-rows.ts";
import { decisionsShown } from "./decisions-shown.ts";

/** Whatever is earlier is in the record. */
const mostDecisions = 1_000;

/** The owner's decisions in the order they were made, each with what has changed since. */
export async function readDecisions(db: Connection, projectId: string): Promise<DecisionShown[]> {
  const decisions = await readLatestDecisions(db, projectId, mostDecisions);
  const [latest] = await readRevisionHeads(db, projectId);
  if (latest === undefined || decisions.length === 0) return [];
  const { digest } = await readCostBook(db, projectId);
  return decisionsShown(decisions, { latest, costBookDigest: digest });
}
