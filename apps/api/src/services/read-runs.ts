import { Assessment, Verdict, type RecordedRun } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { runDifference, type RunAnswer } from "../rerun/run-difference.ts";
import type { Connection } from "../store/connection.ts";
import { findRevisionHead } from "../store/revision-rows.ts";

/** Every run on a revision in order, each held against the one before it. */
export async function readRuns(db: Connection, projectId: string, letter: string): Promise<Outcome<RecordedRun[]>> {
  if ((await findRevisionHead(db, projectId, letter)) === null) return refuse("not-found");
  const rows = await db.assessment.findMany({ where: { projectId, letter }, orderBy: { attempt: "asc" } });
  const runs: RecordedRun[] = [];
  let before: RunAnswer | null = null;
  for (const { attempt, engineVersion, doneAt, verdict, result, resultDigest } of rows) {
    const read = Assessment.safeParse(result);
    const answer: RunAnswer | null =
      read.success && resultDigest !== null ? { assessment: read.data, resultDigest } : null;
    runs.push({
      ...{ attempt, engineVersion, doneAt: doneAt.toISOString(), verdict: Verdict.parse(verdict) },
      resultDigest: answer?.resultDigest ?? null,
      difference: before === null || answer === null ? null : runDifference(before, answer),
    });
    before = answer ?? before;
  }
  return done(runs);
}
