import { addOption, optionJobKey } from "../queue/add-option.ts";
import { findJobs } from "../queue/queue-rows.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { recordOptionAnswer } from "../services/options/record-option-answer.ts";
import { readUnanswered } from "../store/option-rows.ts";

/** Every alternative that waits has a job, or is answered: one without a job gets it, one whose job was given up has failed. */
export const takeUpOptions: Task = {
  name: "take up waiting options",
  every: "* * * * *",
  async run(_payload, { database, log }: TaskContext) {
    const waiting = await readUnanswered(database.connection);
    const jobs = await findJobs(database.connection, waiting.map(optionJobKey));
    for (const key of waiting) {
      const job = jobs.get(optionJobKey(key));
      if (job?.givenUp === false) continue;
      if (job === undefined) await addOption(database.connection, key);
      else {
        const why = `given up: ${job.lastError ?? "the worker ended under it each time"}`;
        log.error({ ...key, why }, "assessment of an alternative failed");
        await recordOptionAnswer(database, key, { ok: false, why });
      }
    }
  },
};
