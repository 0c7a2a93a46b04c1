import { Logger, runOnce } from "graphile-worker";
import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { openPool } from "../../src/database/open-pool.ts";
import { done, refuse } from "../../src/outcome.ts";
import { addJob } from "../../src/queue/add-job.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";

let database: FreshDatabase;
let service: Database;
let pool: ReturnType<typeof openPool>;
const noProject = "00000000-0000-4000-8000-000000000000";

beforeAll(async () => {
  database = await freshDatabase();
  service = openDatabase(database.serviceUrl);
  pool = openPool(database.serviceUrl, 4);
});
afterAll(async () => {
  await pool.end();
  await service.close();
  await database.drop();
});

/** Runs what is in the queue, as the service's role, and returns the payloads it met. */
async function runAll(): Promise<unknown[]> {
  const met: unknown[] = [];
  await runOnce(
    { pgPool: pool, noHandleSignals: true, logger: new Logger(() => () => undefined) },
    { probe: async (payload: unknown) => void met.push(payload) },
  );
  return met;
}

it("a job of a transaction that commits runs once, under the service's role", async () => {
  await service.act(noProject, async (tx) => {
    await addJob(tx, "probe", { n: 1 });
    return done(undefined);
  });
  expect(await runAll()).toEqual([{ n: 1 }]);
  expect(await runAll()).toEqual([]);
});

it("a job of an act that is refused never runs", async () => {
  await service.act(noProject, async (tx) => {
    await addJob(tx, "probe", { n: 2 });
    return refuse("nothing-drawn");
  });
  expect(await runAll()).toEqual([]);
});

it("a job under a key takes the place of the one that waits under it", async () => {
  for (const n of [3, 4]) await addJob(service.connection, "probe", { n }, { key: "one of a kind" });
  expect(await runAll()).toEqual([{ n: 4 }]);
});

it("a job for later does not run now", async () => {
  await addJob(service.connection, "probe", { n: 5 }, { at: new Date(Date.now() + 60_000) });
  expect(await runAll()).toEqual([]);
});
