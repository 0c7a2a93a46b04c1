import type { AssessmentRun } from "@cornerway/schema";
import { assessmentSteps } from "../assessment/assess-scheme.ts";
import { done, refuse, type Outcome } from "../outcome.ts";
import { addAssessment, assessmentKey } from "../queue/add-assessment.ts";
import { removeJob } from "../queue/queue-rows.ts";
import { append } from "../record/append.ts";
import { insertRun, readLatestRun, tellStop, type LatestRun } from "../store/assessment-rows.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { findRevisionHead, type RevisionHead } from "../store/revision-rows.ts";
import { readStampOf } from "../store/stamp-rows.ts";
import { actOf } from "./act-of.ts";
import { authorOf, type Part } from "./part.ts";
import { writeAnswer } from "./record-assessment.ts";

/** How the latest run on a revision stands, and how far it is. */
export async function readAssessmentRun(
  db: Connection,
  projectId: string,
  letter: string,
): Promise<Outcome<AssessmentRun>> {
  const head = await findRevisionHead(db, projectId, letter);
  return head === null ? refuse("not-found") : done(runOf(letter, await readLatestRun(db, projectId, letter)));
}

/** Has a revision assessed again whose assessment failed, or was left by an engine whose form is no longer read here. */
export function assessAgain(database: Database, sender: Part, letter: string): Promise<Outcome<AssessmentRun>> {
  return onRun(database, sender, letter, async ({ tx, part, head: { contentDigest }, latest }) => {
    const { projectId } = part;
    const stamped = (await readStampOf(tx, projectId, letter)) !== null;
    const again = latest.assessment === "failed" || (latest.assessment === "unreadable" && !latest.byNewerEngine);
    if (!again || stamped) return refuse("assessment-moved-on", { detail: howItStands(latest, stamped) });
    const author = authorOf(part, "run-assessment");
    const run = { projectId, letter, attempt: latest.attempt + 1 };
    const { at } = await append(tx, projectId, author, () => ({ kind: "assessment asked for", letter, contentDigest }));
    await insertRun(tx, run, { askedBy: author, askedAt: at });
    await addAssessment(tx, run);
    return done(undefined);
  });
}

/** Stops the assessment of a revision that waits for one: its thread is ended wherever it runs. */
export function stopAssessment(database: Database, sender: Part, letter: string): Promise<Outcome<AssessmentRun>> {
  return onRun(database, sender, letter, async ({ tx, part, head: { contentDigest }, latest }) => {
    if (latest.assessment !== "waiting") return refuse("assessment-moved-on", { detail: howItStands(latest, false) });
    const author = authorOf(part, "run-assessment");
    const run = { projectId: part.projectId, letter, attempt: latest.attempt };
    await writeAnswer(tx, { ...run, contentDigest }, { ok: false, why: `stopped by ${author.name}` }, author);
    await removeJob(tx, assessmentKey(run));
    await tellStop(tx, assessmentKey(run));
    return done(undefined);
  });
}

interface OnRun {
  tx: Connection;
  part: Part;
  head: RevisionHead;
  latest: LatestRun;
}

/** Runs an act on the latest run on a revision, and says how it stands then. */
function onRun(
  database: Database,
  sender: Part,
  letter: string,
  act: (on: OnRun) => Promise<Outcome<undefined>>,
): Promise<Outcome<AssessmentRun>> {
  return actOf(database, sender, "run-assessment", async (tx, part) => {
    const { projectId } = part;
    const head = await findRevisionHead(tx, projectId, letter);
    if (head === null) return refuse("not-found");
    const outcome = await act({ tx, part, head, latest: await readLatestRun(tx, projectId, letter) });
    return outcome.ok ? done(runOf(letter, await readLatestRun(tx, projectId, letter))) : outcome;
  });
}

const howItStands = ({ assessment }: LatestRun, stamped: boolean): string =>
  stamped ? "the revision is stamped" : `the assessment is ${assessment}`;

function runOf(letter: string, latest: LatestRun): AssessmentRun {
  const { attempt, assessment: state, askedAt, startedAt, steps, why, engineVersion } = latest;
  return {
    ...{ letter, attempt, state, why, engineVersion },
    askedAt: askedAt.toISOString(),
    startedAt: startedAt?.toISOString() ?? null,
    steps: { done: state === "done" ? assessmentSteps : steps, of: assessmentSteps },
    leftMs: state === "waiting" ? leftMs(startedAt, steps) : null,
  };
}

function leftMs(startedAt: Date | null, steps: number): number | null {
  if (startedAt === null || steps === 0) return null;
  const soFarMs = Math.max(0, Date.now() - startedAt.getTime());
  return Math.round((soFarMs / steps) * (assessmentSteps - steps));
}
