import { execFile } from "node:child_process";
import path from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { seededLines } from "../../start/seed-demo.mjs";
import { openDatabase, type Database } from "../../src/store/database.ts";

const SEED = path.resolve(import.meta.dirname, "../../src/seed.ts");

let database: FreshDatabase;
let owner: Database;

beforeAll(async () => {
  database = await freshDatabase();
  owner = openDatabase(database.ownerUrl);
});
afterAll(async () => {
  await owner.close();
  await database.drop();
});

/** What the command that sees to the demo says, run as the start runs it. */
async function seed(...words: string[]): Promise<string> {
  const env = { ...process.env, OWNER_DATABASE_URL: database.ownerUrl };
  const node = ["--conditions=development", "--import", "tsx", SEED, ...words];
  const { stdout } = await promisify(execFile)(process.execPath, node, { env });
  return seededLines(JSON.parse(stdout.trim().split("\n").at(-1) ?? "")).join("\n");
}

const openedAt = async () => (await owner.connection.project.findFirstOrThrow()).openedAt.getTime();

it(
  "the demo is made, then left as it is without being told otherwise, and erased only when it is asked for",
  { timeout: 180_000 },
  async () => {
    expect(await seed()).toMatch(/^The demo project is made\.\nSign-ins of the demo/);
    const made = await openedAt();
    const again = await seed();
    expect(again).toMatch(/^The demo project is there, with \d+ entries in its record, and is left as it is\.\n/);
    expect(again).toContain("`npm run seed:demo -- --reset` erases it with its record and makes it anew.");
    expect(await openedAt()).toBe(made);
    const reset = await seed("--reset");
    expect(reset).toMatch(/^The demo project is erased, with the \d+ entries of its record, and made anew\.\n/);
    expect(reset).toContain("Other projects and all people are as they were.");
    expect(await openedAt()).toBeGreaterThan(made);
  },
);
