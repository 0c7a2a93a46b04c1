import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openDatabase } from "../../apps/api/src/store/database.ts";
import { freshDatabase, type FreshDatabase } from "../support/fresh-database.ts";
import { startProcess, type ServiceProcess } from "./service-process.ts";
import { openSharedProject, signIn } from "./shared-project.ts";

const mostPerMinute = 40;
let database: FreshDatabase;
const processes: ServiceProcess[] = [];

beforeAll(async () => {
  database = await freshDatabase();
  const owner = openDatabase(database.ownerUrl);
  await openSharedProject(owner, randomUUID(), 1);
  await owner.close();
  const limit = { REQUESTS_PER_MINUTE: String(mostPerMinute), WORKER: "apart" };
  processes.push(...(await Promise.all([1, 2].map(() => startProcess(database.serviceUrl, limit)))));
});
afterAll(async () => {
  for (const { process } of processes) process.kill("SIGKILL");
  await database.drop();
});

it("what one process counted of a session, the other one counts too", async () => {
  const [first, second] = processes.map(({ origin }) => origin);
  const { cookie } = await signIn(first ?? "", 0);
  const ask = async (origin = "") => (await fetch(`${origin}/api/projects`, { headers: { cookie } })).status;
  const answers: number[] = [];
  for (let n = 0; n < mostPerMinute; n += 1) answers.push(await ask(first));
  expect(new Set(answers)).toEqual(new Set([200]));
  expect(await ask(second)).toBe(200); // the sum is known within a second of the first request there
  await expect.poll(() => ask(second), { interval: 200 }).toBe(429);
});
