import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { MigrationList, SchemaEngine } from "@prisma/schema-engine-wasm";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { migrationList, openSchemaEngine } from "../../../../tests/support/schema-engine.ts";
import { withClient } from "../../src/database/with-client.ts";

const prisma = path.resolve(import.meta.dirname, "../../../../prisma");
const schemaFile = path.join(prisma, "schema.prisma");
const filters = { externalTables: [], externalEnums: [] };

let database: FreshDatabase;
let engine: SchemaEngine;

beforeAll(async () => {
  database = await freshDatabase();
  engine = await openSchemaEngine(database.ownerUrl, schemaFile);
});
afterAll(() => database.drop());

const list = (folder = path.join(prisma, "migrations")): MigrationList => {
  const folders = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return migrationList(folder, folders.map(({ name }) => name).sort());
};

const diff = async (content: string) => {
  const to = { tag: "schemaDatamodel" as const, files: [{ path: schemaFile, content }] };
  const { stdout } = await engine.diff({
    ...{ from: { tag: "migrations", ...list() }, to, script: true, exitCode: true, filters },
  });
  return stdout?.trim();
};

const diagnose = (migrationsList: MigrationList) =>
  engine.diagnoseMigrationHistory({ migrationsList, optInToShadowDatabase: true, filters });

describe("schema.prisma, by the official engine", () => {
  it("is what the migrations make: the next migration would be empty", async () => {
    expect(await diff(readFileSync(schemaFile, "utf8"))).toBe("-- This is an empty migration.");
  });

  it("with another column would need a migration, so that the check above can fail", async () => {
    const changed = readFileSync(schemaFile, "utf8").replace("model Draft {", "model Draft {\n  extra Int?");
    expect(await diff(changed)).toContain('ALTER TABLE "draft" ADD COLUMN     "extra" INTEGER');
  });
});

describe("a database that our runner migrated, by the official engine", () => {
  it("has a clean history: nothing edited, nothing failed, nothing to apply", async () => {
    expect(await diagnose(list())).toEqual({
      ...{ editedMigrationNames: [], failedMigrationNames: [], hasMigrationsTable: true, history: null },
    });
  });

  it("is told from one whose migration was edited since", async () => {
    const folder = mkdtempSync(path.join(os.tmpdir(), "edited-"));
    cpSync(path.join(prisma, "migrations"), folder, { recursive: true });
    const first = readdirSync(folder).sort()[0] ?? "";
    writeFileSync(path.join(folder, first, "migration.sql"), "select 1;");
    expect((await diagnose(list(folder))).editedMigrationNames).toEqual([first]);
  });

  it("keeps no database that the engine played in", async () => {
    const { rows } = await withClient(database.ownerUrl, (client) =>
      client.query("select datname from pg_database where datname like 'shadow_%'"),
    );
    expect(rows).toEqual([]);
  });
});
