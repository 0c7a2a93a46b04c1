import { runMigrations } from "graphile-worker";
import { openPool } from "./open-pool.ts";
import { SERVICE_ROLE } from "./service-role.ts";
import { withClient } from "./with-client.ts";

/** Tables of the queue in which the service adds, takes, answers and removes jobs. Their rows are guarded, so each needs a policy. */
const TABLES = ["_private_jobs", "_private_job_queues", "_private_tasks", "_private_known_crontabs"];

/** Which version the tables have, and jobs without their payloads: read only. */
const READ_ONLY = ["migrations", "jobs"];

/**
 * Brings the queue's own tables up to date as their owner, in the schema `graphile_worker`, and lets the service's role
 * add and run jobs there and nothing else.
 */
export async function migrateQueue(ownerUrl: string): Promise<void> {
  const pgPool = openPool(ownerUrl, 2);
  try {
    await runMigrations({ pgPool });
  } finally {
    await pgPool.end();
  }
  await withClient(ownerUrl, (client) => client.query(grants()));
}

function grants(): string {
  const policies = TABLES.map(
    (table) => `
    grant select, insert, update, delete on graphile_worker.${table} to ${SERVICE_ROLE};
    if not exists (select 1 from pg_policies where schemaname = 'graphile_worker' and tablename = '${table}' and policyname = 'service') then
      create policy service on graphile_worker.${table} to ${SERVICE_ROLE} using (true) with check (true);
    end if;`,
  );
  const readable = READ_ONLY.map((table) => `grant select on graphile_worker.${table} to ${SERVICE_ROLE};`);
  return `do $grants$ begin
    grant usage on schema graphile_worker to ${SERVICE_ROLE};
    ${[...readable, ...policies].join("\n")}
  end $grants$`;
}
