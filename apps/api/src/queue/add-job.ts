import type { Connection } from "../store/connection.ts";

/** What a task is told: plain JSON, small. Ids rather than contents, which the task reads when it runs. */
export type JobPayload = Record<string, string | number | boolean | null>;

export interface JobOptions {
  /** A job under a key takes the place of the one that still waits under it; one that runs already is left to run. */
  key?: string;
  /** Tries before it is given up; the pause before each grows by e, from 2.7 s. */
  tries?: number;
  /** Not before this time; now when left out. */
  at?: Date;
}

const usualTries = 10;

/**
 * Puts a job in the queue within the caller's transaction: it runs once that commits, and never when it rolls back.
 * `name` is one of the tasks in `tasks.ts`.
 */
export async function addJob(
  tx: Connection,
  name: string,
  payload: JobPayload,
  { key, tries = usualTries, at }: JobOptions = {},
): Promise<void> {
  await tx.$queryRaw`
    select "id"::text from graphile_worker.add_job(${name}, payload => ${JSON.stringify(payload)}::json,
      run_at => ${at?.toISOString() ?? null}::timestamptz, max_attempts => ${tries}::int, job_key => ${key ?? null}::text)`;
}
