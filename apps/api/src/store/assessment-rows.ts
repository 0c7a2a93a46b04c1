import { engineVersion as ownVersion } from "@cornerway/engine";
import { Assessment, Verdict, type Author, type Digest } from "@cornerway/schema";
import type { Prisma } from "../generated/prisma/client.ts";
import { isNewer } from "../is-newer.ts";
import type { Connection } from "./connection.ts";

/** One run of the engine on a revision; `attempt` 1 is the one that sending it asks for. */
export interface RunKey {
  projectId: string;
  letter: string;
  attempt: number;
}

/** How the latest run on a revision stands. `unreadable` is a result of a newer engine than this build's. */
export interface LatestRun {
  attempt: number;
  assessment: "waiting" | "done" | "failed" | "unreadable";
  verdict: Verdict;
  resultDigest: Digest | null;
  engineVersion: string | null;
  why: string | null;
  askedAt: Date;
  startedAt: Date | null;
  /** Steps of the run that are done. */
  steps: number;
  /** True where the answer is unreadable because a newer engine made it. */
  byNewerEngine: boolean;
}

/** The server's own answer to a run. */
export type AssessmentRow = {
  letter: string;
  attempt: number;
  verdict: Verdict;
  engineVersion: string;
  doneAt: string;
} & (
  | { state: "done"; result: Assessment; resultDigest: Digest; why: null }
  | { state: "failed"; result: null; resultDigest: null; why: string }
);

interface LatestRunRow extends Omit<LatestRun, "assessment" | "verdict" | "byNewerEngine"> {
  state: string | null;
  verdict: string | null;
}

/** Throws when the revision was never sent. */
export async function readLatestRun(db: Connection, projectId: string, letter: string): Promise<LatestRun> {
  const rows = await db.$queryRaw<LatestRunRow[]>`
    select r."attempt", r."asked_at" as "askedAt", r."started_at" as "startedAt", r."steps", a."state", a."verdict",
      a."result_digest" as "resultDigest", a."engine_version" as "engineVersion", a."why"
    from "assessment_run" r left join "assessment" a
      on a."project_id" = r."project_id" and a."letter" = r."letter" and a."attempt" = r."attempt"
    where r."project_id" = ${projectId}::uuid and r."letter" = ${letter} order by r."attempt" desc limit 1`;
  const row = rows[0];
  if (row === undefined) throw new Error(`readLatestRun: revision ${letter} of ${projectId} was never sent`);
  return latestRunOf(row);
}

function latestRunOf({ state, verdict, ...rest }: LatestRunRow): LatestRun {
  const row = { ...rest, byNewerEngine: rest.engineVersion !== null && isNewer(rest.engineVersion, ownVersion) };
  if (state === null) return { ...row, assessment: "waiting", verdict: "not checked" };
  if (state === "failed") return { ...row, assessment: "failed", verdict: "not checked" };
  return row.byNewerEngine ? unreadable(row) : { ...row, assessment: "done", verdict: Verdict.parse(verdict) };
}

/** Nothing of a result that this build cannot read is passed on, its digest neither: nobody stamps what they cannot see. */
const unreadable = (row: Omit<LatestRun, "assessment" | "verdict">): LatestRun => ({
  ...row,
  assessment: "unreadable",
  verdict: "not checked",
  resultDigest: null,
});

/** The answer of the latest run with how it stands; a stored answer of another form is unreadable as well. */
export async function readResult(
  db: Connection,
  projectId: string,
  letter: string,
): Promise<{ latest: LatestRun; result: Assessment | null }> {
  const latest = await readLatestRun(db, projectId, letter);
  if (latest.assessment !== "done") return { latest, result: null };
  const { attempt } = latest;
  const row = await db.assessment.findUnique({ where: { projectId_letter_attempt: { projectId, letter, attempt } } });
  const read = Assessment.safeParse(row?.result);
  return read.success ? { latest, result: read.data } : { latest: unreadable(latest), result: null };
}

/** Runs of all projects without an answer, the longest waiting first. */
export function readWaiting(db: Connection): Promise<RunKey[]> {
  return db.$queryRaw`
    select r."project_id"::text as "projectId", r."letter", r."attempt" from "assessment_run" r
    where not exists (select 1 from "assessment" a
      where a."project_id" = r."project_id" and a."letter" = r."letter" and a."attempt" = r."attempt")
    order by r."asked_at" limit 500`;
}

export async function insertRun(
  tx: Connection,
  { projectId, letter, attempt }: RunKey,
  { askedBy, askedAt }: { askedBy: Author | null; askedAt: string },
): Promise<void> {
  const data = { projectId, letter, attempt, askedAt };
  await tx.assessmentRun.create({ data: askedBy === null ? data : { ...data, askedBy } });
}

/** Notes how far a run is. `started` says that it begins now. */
export async function noteSteps(db: Connection, key: RunKey, steps: number, started = false): Promise<void> {
  await db.assessmentRun.update({
    where: { projectId_letter_attempt: key },
    data: { steps, ...(started ? { startedAt: new Date() } : {}) },
  });
}

export const progressChannel = "cornerway_progress";
export const stopChannel = "cornerway_stop";

/** Tells listeners that a run is further on; they read how far. */
export async function tellProgress(db: Connection, { projectId, letter }: RunKey): Promise<void> {
  await db.$queryRaw`select pg_notify(${progressChannel}, ${JSON.stringify({ project: projectId, letter })})::text`;
}

/** Tells whoever works on a run, by the key of its job, to end its thread; heard when the transaction commits. */
export async function tellStop(tx: Connection, key: string): Promise<void> {
  await tx.$queryRaw`select pg_notify(${stopChannel}, ${key})::text`;
}

export async function insertAssessment(tx: Connection, projectId: string, row: AssessmentRow): Promise<void> {
  const { result, ...rest } = row;
  const data: Prisma.AssessmentUncheckedCreateInput = { projectId, ...rest };
  await tx.assessment.create({ data: result === null ? data : { ...data, result } });
}
