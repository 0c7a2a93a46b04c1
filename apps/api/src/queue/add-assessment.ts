import type { RunKey } from "../store/assessment-rows.ts";
import type { Connection } from "../store/connection.ts";
import { addJob } from "./add-job.ts";

export const assessTask = "assess revision";

/** Enough for a worker that is killed or ended under it a few times; a fault of the engine is given up sooner. */
const tries = 6;

/** Under its key a job is found again: to be stopped, or to see that a run has none. */
export const assessmentKey = ({ projectId, letter, attempt }: RunKey): string =>
  `assess ${projectId} ${letter} ${attempt}`;

export const addAssessment = (tx: Connection, run: RunKey): Promise<void> =>
  addJob(tx, assessTask, { ...run }, { key: assessmentKey(run), tries });
