import { setTimeout as pause } from "node:timers/promises";
import type postgres from "postgres";
import type { BuiltProcess } from "../support/built-process.ts";
import type { KillableDatabase } from "./killable-database.ts";

export const kinds = ["API", "worker", "database", "listener", "mid-transaction"] as const;
export type Kind = (typeof kinds)[number];

/** Of twenty kills: most cost a connection, one the whole database. */
const turns: readonly Kind[] = [
  ...(["listener", "mid-transaction", "API", "mid-transaction", "listener", "mid-transaction", "worker"] as const),
  ...(["listener", "mid-transaction", "API", "listener", "mid-transaction", "worker", "mid-transaction"] as const),
  ...(["listener", "API", "mid-transaction", "listener", "mid-transaction", "database"] as const),
];

export const kindOf = (n: number): Kind => turns[n % turns.length] ?? "listener";

export interface Fleet {
  apis: readonly BuiltProcess[];
  workers: readonly BuiltProcess[];
  database: KillableDatabase;
}

/** Kills one thing, and has it started again where it does not come back by itself. False when there was nothing to kill. */
export async function kill(
  kind: Kind,
  { apis, workers, database }: Fleet,
  sql: postgres.Sql,
  n: number,
): Promise<boolean> {
  switch (kind) {
    case "API":
      return killProcess(apis[n % apis.length]);
    case "worker":
      return killProcess(workers[n % workers.length]);
    case "database":
      await database.killAndRestart();
      return true;
    case "listener":
      return terminate(sql, () => listeners(sql));
    case "mid-transaction":
      return terminate(sql, () => inTransaction(sql));
  }
}

async function killProcess(one: BuiltProcess | undefined): Promise<boolean> {
  await one?.killAndRestart();
  return one !== undefined;
}

type Backend = { pid: number };

const listeners = (sql: postgres.Sql) => sql<Backend[]>`
  select "pid" from pg_stat_activity
  where "datname" = current_database() and "usename" = 'cornerway_service' and "query" ilike 'listen%' order by random() limit 1`;

/** A connection that has written in a transaction which is still open. */
const inTransaction = (sql: postgres.Sql) => sql<Backend[]>`
  select "pid" from pg_stat_activity
  where "datname" = current_database() and "usename" = 'cornerway_service' and "backend_xid" is not null order by random() limit 1`;

const longestSearchMs = 3_000;

async function terminate(sql: postgres.Sql, find: () => Promise<Backend[]>): Promise<boolean> {
  for (const beganMs = Date.now(); Date.now() - beganMs < longestSearchMs; await pause(1)) {
    const [found] = await find();
    if (found === undefined) continue;
    const [killed] = await sql<{ done: boolean }[]>`select pg_terminate_backend(${found.pid}) as "done"`;
    if (killed?.done === true) return true;
  }
  return false;
}
