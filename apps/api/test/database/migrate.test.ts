import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { migrate } from "../../src/database/index.ts";
import { withClient } from "../../src/database/with-client.ts";
import { emptyDatabase, type EmptyDatabase } from "../support/empty-database.ts";

let database: EmptyDatabase;
let folder: string;

beforeEach(async () => {
  database = await emptyDatabase();
  folder = mkdtempSync(path.join(os.tmpdir(), "migrations-"));
});

afterEach(async () => {
  rmSync(folder, { recursive: true });
  await database.drop();
});

it("migrate applies the folders in the order of their names, each once", async () => {
  write("2_second", "alter table pad add column level_error_um integer;");
  write("1_first", "create table pad (id text primary key);");
  expect(await migrate(database.ownerUrl, folder)).toEqual(["1_first", "2_second"]);
  expect(await migrate(database.ownerUrl, folder)).toEqual([]);
  await withClient(database.ownerUrl, (client) =>
    client.query("insert into pad (id, level_error_um) values ('p1', 500)"),
  );
});

it("migrate keeps the SHA-256 of the file's bytes", async () => {
  write("1_first", "abc"); // digest of "abc": FIPS 180-4, example of NIST's SHA-256 test vectors
  await expect(migrate(database.ownerUrl, folder)).rejects.toThrow('syntax error at or near "abc"');
  expect(await history("checksum")).toEqual(["ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"]);
});

it("migrate refuses a database whose applied migration was edited, and names it", async () => {
  write("1_first", "create table pad (id text primary key);");
  await migrate(database.ownerUrl, folder);
  write("1_first", "create table pad (id text primary key, height integer);");
  await expect(migrate(database.ownerUrl, folder)).rejects.toMatchObject({
    code: "migration-edited",
    detail: "1_first",
  });
});

it("migrate refuses a database that holds a migration the files lack", async () => {
  write("1_first", "create table pad (id text primary key);");
  await migrate(database.ownerUrl, folder);
  rmSync(path.join(folder, "1_first"), { recursive: true });
  await expect(migrate(database.ownerUrl, folder)).rejects.toMatchObject({
    code: "migration-unknown",
    detail: "1_first",
  });
});

it("migrate leaves nothing of a migration that fails half way, notes why, and applies it once mended", async () => {
  write("1_first", "create table pad (id text primary key); insert into nowhere values (1);");
  await expect(migrate(database.ownerUrl, folder)).rejects.toMatchObject({ code: "migration-failed" });
  expect(await tables()).toEqual(["_prisma_migrations"]);
  expect(await history("logs")).toEqual(['relation "nowhere" does not exist']);
  write("1_first", "create table pad (id text primary key);");
  expect(await migrate(database.ownerUrl, folder)).toEqual(["1_first"]);
  expect(await tables()).toEqual(["_prisma_migrations", "pad"]);
});

it("migrate takes up again what a killed run began and never finished", async () => {
  write("1_first", "create table pad (id text primary key);");
  await migrate(database.ownerUrl, folder);
  await withClient(database.ownerUrl, (client) =>
    client.query(`drop table pad; update "_prisma_migrations" set finished_at = null, applied_steps_count = 0`),
  );
  expect(await migrate(database.ownerUrl, folder)).toEqual(["1_first"]);
  expect(await tables()).toEqual(["_prisma_migrations", "pad"]);
});

it("two migrate calls at once apply each migration once", async () => {
  write("1_first", "create table pad (id text primary key); select pg_sleep(0.3);");
  const applied = await Promise.all([migrate(database.ownerUrl, folder), migrate(database.ownerUrl, folder)]);
  expect(applied.flat()).toEqual(["1_first"]);
});

it("migrate takes a body with semicolons between dollar signs as one statement", async () => {
  write("1_first", "create function one() returns integer language plpgsql as $$ begin perform 1; return 1; end; $$;");
  await migrate(database.ownerUrl, folder);
  const { rows } = await withClient(database.ownerUrl, (client) => client.query("select one()"));
  expect(rows).toEqual([{ one: 1 }]);
});

function write(name: string, sql: string): void {
  mkdirSync(path.join(folder, name), { recursive: true });
  writeFileSync(path.join(folder, name, "migration.sql"), sql);
}

async function history(column: "checksum" | "logs"): Promise<unknown[]> {
  const { rows } = await withClient(database.ownerUrl, (client) =>
    client.query(`select ${column} as value from "_prisma_migrations" order by started_at`),
  );
  return rows.map((row: { value: unknown }) => row.value);
}

async function tables(): Promise<string[]> {
  const { rows } = await withClient(database.ownerUrl, (client) =>
    client.query<{ name: string }>("select tablename as name from pg_tables where schemaname = 'public' order by 1"),
  );
  return rows.map(({ name }) => name);
}
