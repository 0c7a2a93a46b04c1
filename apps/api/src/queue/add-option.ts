import type { Connection } from "../store/connection.ts";
import type { OptionKey } from "../store/option-rows.ts";
import { addJob } from "./add-job.ts";

export const optionTask = "assess option";

/** Enough for a worker that is killed or ended under it a few times. */
const tries = 4;

export const optionJobKey = ({ projectId, optionId }: OptionKey): string => `option ${projectId} ${optionId}`;

/** Puts the assessment of an alternative in the queue, within the caller's transaction. */
export const addOption = (tx: Connection, key: OptionKey): Promise<void> =>
  addJob(tx, optionTask, { ...key }, { key: optionJobKey(key), tries });
