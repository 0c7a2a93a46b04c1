import { serviceActor, type Actor, type Digest } from "@cornerway/schema";
import { engineVersion } from "@cornerway/engine";
import type { SchemeAssessed } from "../assessment/assess-scheme.ts";
import { done, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import { insertAssessment, readLatestRun } from "../store/assessment-rows.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { insertProof } from "../store/proof-rows.ts";

export type Assessed =
  | ({ ok: true } & SchemeAssessed)
  /** One sentence on what went wrong: too slow, stopped, or a fault of the engine. */
  | { ok: false; why: string };

/** The revision, and which run on it is answered. */
export interface AssessedRun {
  projectId: string;
  letter: string;
  attempt: number;
  contentDigest: Digest;
}

/** Writes the server's answer to a run, once: an answer that is there already stays, and one to an earlier run is dropped. */
export function recordAssessment(database: Database, run: AssessedRun, assessed: Assessed): Promise<Outcome<void>> {
  return database.act(run.projectId, async (tx) => {
    const { attempt, assessment } = await readLatestRun(tx, run.projectId, run.letter);
    if (attempt === run.attempt && assessment === "waiting") await writeAnswer(tx, run, assessed);
    return done(undefined);
  });
}

/** Within an act on the project, for a run that waits. `actor` is the service unless a person stopped it. */
export async function writeAnswer(
  tx: Connection,
  { projectId, letter, attempt, contentDigest }: AssessedRun,
  assessed: Assessed,
  actor: Actor = serviceActor,
): Promise<void> {
  const answered = { letter, attempt, engineVersion };
  if (assessed.ok) {
    const { assessment: result, resultDigest, proof } = assessed;
    const { verdict } = result;
    const payload = { letter, contentDigest, resultDigest, verdict, engineVersion };
    const { at } = await append(tx, projectId, actor, () => ({ kind: "assessed", ...payload }));
    const done = { state: "done", doneAt: at, verdict, result, resultDigest, why: null } as const;
    await insertAssessment(tx, projectId, { ...answered, ...done });
    if (proof !== null) await insertProof(tx, { projectId, letter, attempt }, proof);
    return;
  }
  const { why } = assessed;
  const { at } = await append(tx, projectId, actor, () => ({ kind: "assessment failed", letter, contentDigest, why }));
  const failed = {
    state: "failed",
    doneAt: at,
    verdict: "not checked",
    result: null,
    resultDigest: null,
    why,
  } as const;
  return insertAssessment(tx, projectId, { ...answered, ...failed });
}
