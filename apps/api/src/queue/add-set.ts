import type { Connection } from "../store/connection.ts";
import type { SetKey } from "../store/permit-set-rows.ts";
import { addJob } from "./add-job.ts";

export const printTask = "print set";

/** Enough for a worker that is killed or ended under it a few times. */
const tries = 4;

export const printKey = ({ projectId, id }: SetKey): string => `print ${projectId} ${id}`;

export const addSet = (tx: Connection, set: SetKey): Promise<void> =>
  addJob(tx, printTask, { ...set }, { key: printKey(set), tries });
