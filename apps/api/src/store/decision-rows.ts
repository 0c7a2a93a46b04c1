import { Decision, type Digest } from "@cornerway/schema";
import type { Decision as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

export interface FoundDecision {
  decision: Decision;
  bodyDigest: Digest;
}

export async function insertDecision(
  tx: Connection,
  projectId: string,
  decision: Decision,
  bodyDigest: Digest,
): Promise<void> {
  await tx.decision.create({ data: { projectId, ...decision, bodyDigest } });
}

export async function findDecision(db: Connection, projectId: string, id: string): Promise<FoundDecision | null> {
  const row = await db.decision.findUnique({ where: { projectId_id: { projectId, id } } });
  return row === null ? null : { decision: decisionOf(row), bodyDigest: row.bodyDigest };
}

/** The latest decisions of a project, at most `limit`, in the order they were made. */
export async function readLatestDecisions(db: Connection, projectId: string, limit: number): Promise<Decision[]> {
  const rows = await db.decision.findMany({ where: { projectId }, orderBy: { decidedAt: "desc" }, take: limit });
  return rows.toReversed().map(decisionOf);
}

const decisionOf = ({ projectId: _project, bodyDigest: _body, decidedAt, ...row }: Row): Decision =>
  Decision.parse({ ...row, decidedAt: decidedAt.toISOString() });
