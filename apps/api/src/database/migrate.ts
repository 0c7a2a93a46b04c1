import { createHash, randomUUID } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import type pg from "pg";
import { DatabaseTrouble } from "./database-trouble.ts";
import { migrateQueue } from "./migrate-queue.ts";
import { withClient } from "./with-client.ts";

interface Migration {
  name: string;
  sql: string;
  checksum: string;
}

interface AppliedRow {
  id: string;
  migration_name: string;
  checksum: string;
  finished_at: Date | null;
}

/** Key of the advisory lock that Prisma's own migration engine takes, so that the two wait for each other. */
const MIGRATION_LOCK = 72707369;

const MIGRATIONS_FOLDER = path.resolve(import.meta.dirname, "../../../../prisma/migrations");

// Same columns as Prisma's own engine makes, so that either may take over from the other.
const CREATE_HISTORY = `create table if not exists "_prisma_migrations" (
  id varchar(36) primary key not null,
  checksum varchar(64) not null,
  finished_at timestamptz,
  migration_name varchar(255) not null,
  logs text,
  rolled_back_at timestamptz,
  started_at timestamptz not null default now(),
  applied_steps_count integer not null default 0
)`;

/**
 * Applies the migrations that `ownerUrl` lacks, in the order of their names, and returns those names.
 * Each runs whole in one transaction, so CREATE INDEX CONCURRENTLY has no place in one. Refuses a database whose
 * applied migrations differ from the files or are unknown to them. The queue's own tables follow after them. `only` leaves
 * the others for later: tables as they once were, to be filled from a backup of that time.
 */
export async function migrate(
  ownerUrl: string,
  folder: string = MIGRATIONS_FOLDER,
  only?: ReadonlySet<string>,
): Promise<string[]> {
  const migrations = readMigrations(folder).filter(({ name }) => only?.has(name) ?? true);
  return withClient(ownerUrl, async (client) => {
    await client.query("select pg_advisory_lock($1)", [MIGRATION_LOCK]);
    await client.query(CREATE_HISTORY);
    const pending = pendingMigrations(migrations, await readHistory(client));
    for (const migration of pending) await apply(client, migration);
    await migrateQueue(ownerUrl);
    return pending.map(({ name }) => name);
  });
}

/** The names of the migrations this version has, in order. */
export const knownMigrations = (): string[] => readMigrations(MIGRATIONS_FOLDER).map(({ name }) => name);

function readMigrations(folder: string): Migration[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => readMigration(folder, name))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

function readMigration(folder: string, name: string): Migration {
  const bytes = readFileSync(path.join(folder, name, "migration.sql"));
  return { name, sql: bytes.toString("utf8"), checksum: createHash("sha256").update(bytes).digest("hex") };
}

/** What an earlier run began and did not finish was rolled back with its transaction: it is noted so and tried again. */
async function readHistory(client: pg.Client): Promise<AppliedRow[]> {
  await client.query(
    `update "_prisma_migrations" set rolled_back_at = now() where finished_at is null and rolled_back_at is null`,
  );
  const { rows } = await client.query<AppliedRow>(
    `select id, migration_name, checksum, finished_at from "_prisma_migrations" where rolled_back_at is null order by migration_name`,
  );
  return rows;
}

function pendingMigrations(migrations: Migration[], history: AppliedRow[]): Migration[] {
  const byName = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const { migration_name: name, checksum } of history) {
    const file = byName.get(name);
    if (file === undefined) throw new DatabaseTrouble("migration-unknown", name);
    if (file.checksum !== checksum) throw new DatabaseTrouble("migration-edited", name);
    byName.delete(name);
  }
  return [...byName.values()];
}

async function apply(client: pg.Client, { name, sql, checksum }: Migration): Promise<void> {
  const id = randomUUID();
  await client.query(`insert into "_prisma_migrations" (id, checksum, migration_name) values ($1, $2, $3)`, [
    id,
    checksum,
    name,
  ]);
  try {
    await client.query("begin");
    await client.query(sql);
    await client.query(`update "_prisma_migrations" set finished_at = now(), applied_steps_count = 1 where id = $1`, [
      id,
    ]);
    await client.query("commit");
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    await client.query("rollback");
    await client.query(`update "_prisma_migrations" set logs = $2, rolled_back_at = now() where id = $1`, [id, reason]);
    throw new DatabaseTrouble("migration-failed", `${name}: ${reason}`, error);
  }
}
