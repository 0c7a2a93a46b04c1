import { addAssessment, assessmentKey } from "../queue/add-assessment.ts";
import { findJobs } from "../queue/queue-rows.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { recordAssessment } from "../services/record-assessment.ts";
import { readWaiting } from "../store/assessment-rows.ts";
import { readRevision } from "../store/revision-rows.ts";

/**
 * Every run that waits has a job, or is answered: one without a job gets it, one whose job was given up, because it ended
 * its worker time and again, has failed.
 */
export const takeUpWaiting: Task = {
  name: "take up waiting revisions",
  every: "* * * * *",
  async run(_payload, { database, log }: TaskContext) {
    const waiting = await readWaiting(database.connection);
    const jobs = await findJobs(database.connection, waiting.map(assessmentKey));
    for (const run of waiting) {
      const job = jobs.get(assessmentKey(run));
      if (job?.givenUp === false) continue;
      if (job === undefined) await addAssessment(database.connection, run);
      else {
        const why = `given up: ${job.lastError ?? "the worker ended under it each time"}`;
        const revision = await readRevision(database.connection, run.projectId, run.letter);
        if (revision === null) continue;
        log.error({ ...run, why }, "assessment failed");
        await recordAssessment(database, { ...run, contentDigest: revision.contentDigest }, { ok: false, why });
      }
    }
  },
};
