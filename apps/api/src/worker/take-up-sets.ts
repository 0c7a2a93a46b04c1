import { addSet, printKey } from "../queue/add-set.ts";
import { findJobs } from "../queue/queue-rows.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { answerSet, readWaitingSets } from "../store/permit-set-rows.ts";

/** Every set that waits has a job, or is answered: one without a job gets it, one whose job was given up has failed. */
export const takeUpSets: Task = {
  name: "take up waiting sets",
  every: "* * * * *",
  async run(_payload, { database: { connection }, log }: TaskContext) {
    const waiting = await readWaitingSets(connection);
    const jobs = await findJobs(connection, waiting.map(printKey));
    for (const key of waiting) {
      const job = jobs.get(printKey(key));
      if (job?.givenUp === false) continue;
      if (job === undefined) await addSet(connection, key);
      else {
        const why = `given up: ${job.lastError ?? "the worker ended under it each time"}`;
        log.error({ ...key, why }, "a permit set failed");
        await answerSet(connection, key, { state: "failed", why });
      }
    }
  },
};
