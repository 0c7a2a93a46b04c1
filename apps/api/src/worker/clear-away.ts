import type { Task } from "../queue/task.ts";
import type { Connection } from "../store/connection.ts";
import {
  deleteEndedRateWindows,
  deleteExpiredSessions,
  deleteOldAnswers,
  deleteOldDeliveries,
  deleteOldWorkers,
} from "../store/run-out-rows.ts";

/** What has run out and is of no use to anyone, each by one statement. */
const clearings: readonly ((db: Connection) => Promise<void>)[] = [
  deleteExpiredSessions,
  deleteEndedRateWindows,
  deleteOldWorkers,
  deleteOldAnswers,
  deleteOldDeliveries,
];

export const clearAway: Task = {
  name: "clear away what has run out",
  every: "*/10 * * * *",
  async run(_payload, { database }) {
    for (const clear of clearings) await clear(database.connection);
  },
};
