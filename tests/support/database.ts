import { chmodSync, mkdtempSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { TestProject } from "vitest/node";
import { migrate, startPostgres } from "../../apps/api/src/database/index.ts";
import { createDatabase, renamedDatabase } from "./create-database.ts";

/** What a test needs to make itself a database: see freshDatabase. */
export interface DatabaseTemplate {
  ownerUrl: string;
  serviceUrl: string;
  name: string;
}

declare module "vitest" {
  export interface ProvidedContext {
    databaseTemplate: DatabaseTemplate;
  }
}

/** Starts PostgreSQL once for a run (or takes DATABASE_URL) and migrates a template that each test's database is copied from. */
export default async function databaseForTests(project: TestProject): Promise<() => Promise<void>> {
  const dataFolder = mkdtempSync(path.join(os.tmpdir(), "cornerway-test-"));
  chmodSync(dataFolder, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  const server = await startPostgres({ dataFolder, databaseUrl: process.env["DATABASE_URL"], keep: false });
  try {
    const name = `cornerway_template_${process.pid}`;
    await createDatabase(server.ownerUrl, name);
    await migrate(renamedDatabase(server.ownerUrl, name));
    project.provide("databaseTemplate", { ownerUrl: server.ownerUrl, serviceUrl: server.serviceUrl, name });
  } catch (error) {
    await server.stop();
    throw error;
  }
  return () => server.stop();
}
