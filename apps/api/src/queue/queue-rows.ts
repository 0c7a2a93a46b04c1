import type { Connection } from "../store/connection.ts";

/** Takes a job out of the queue; one that runs is left to run, but is not tried again. */
export async function removeJob(tx: Connection, key: string): Promise<void> {
  await tx.$queryRaw`select 1 from graphile_worker.remove_job(${key}) as removed where removed is not null`;
}

/** Of the given keys, those of jobs that wait, run, or were given up, with the last error of one given up. */
export async function findJobs(
  db: Connection,
  keys: readonly string[],
): Promise<Map<string, { givenUp: boolean; lastError: string | null }>> {
  const rows = await db.$queryRaw<{ key: string; givenUp: boolean; lastError: string | null }[]>`
    select "key", "attempts" >= "max_attempts" and "locked_at" is null as "givenUp", "last_error" as "lastError"
    from graphile_worker.jobs where "key" = any(${[...keys]})`;
  return new Map(rows.map(({ key, ...job }) => [key, job]));
}

/** Jobs by task and state, for those who watch the service. */
export async function countJobs(db: Connection): Promise<{ task: string; state: string; count: number }[]> {
  return db.$queryRaw`
    select "task_identifier" as "task",
      case when "locked_at" is not null then 'running' when "attempts" >= "max_attempts" then 'given up' else 'waiting' end as "state",
      count(*)::int as "count"
    from graphile_worker.jobs group by 1, 2`;
}
