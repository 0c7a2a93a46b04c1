import { randomUUID } from "node:crypto";
import type { Presence } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { LiveClient } from "../../apps/api/test/support/live-client.ts";
import { openDatabase, type Database } from "../../apps/api/src/store/database.ts";
import { freshDatabase, type FreshDatabase } from "../support/fresh-database.ts";
import { startProcess, type ServiceProcess } from "./service-process.ts";
import { openSharedProject, signIn } from "./shared-project.ts";

let database: FreshDatabase;
let owner: Database;
let processes: ServiceProcess[] = [];
const lines: LiveClient[] = [];
const projectId = randomUUID();

beforeAll(async () => {
  database = await freshDatabase();
  owner = openDatabase(database.ownerUrl);
  await openSharedProject(owner, projectId, 2);
  processes = await Promise.all([startProcess(database.serviceUrl), startProcess(database.serviceUrl)]);
});
afterAll(async () => {
  for (const line of lines) line.end();
  for (const one of processes) one.process.kill("SIGKILL");
  await Promise.all(processes.map(({ ended }) => ended));
  await owner.close();
  await database.drop();
});

async function lineOf(n: number): Promise<{ line: LiveClient; cookie: string; csrfToken: string; origin: string }> {
  const origin = processes[n]?.origin ?? "";
  const { cookie, csrfToken } = await signIn(origin, n);
  const line = new LiveClient(origin, `/api/projects/${projectId}/live`, { cookie, origin });
  lines.push(line);
  await line.say({ type: "resume", after: 0 });
  await expect.poll(() => line.upTo).toBe(4);
  return { line, cookie, csrfToken, origin };
}

it("what someone holds at one process is seen at the other, and signing out at one cuts a line at the other within 2 s", async () => {
  const [mine, theirs] = [await lineOf(0), await lineOf(1)];
  const presence: Presence = { sheet: 2, selected: "g1", dragging: null };
  await mine.line.say({ type: "presence", presence });
  const seen = () => theirs.line.here.find(({ name }) => name === "Person 0")?.presence;
  await expect.poll(seen).toEqual(presence);

  const headers = { cookie: mine.cookie, "csrf-token": mine.csrfToken };
  const from = Date.now();
  const signedOut = await fetch(`${theirs.origin}/api/session`, { method: "DELETE", headers });
  expect(signedOut.status).toBe(204);
  await expect.poll(() => mine.line.closed?.code).toBe(4401);
  expect((mine.line.closed?.atMs ?? Infinity) - from).toBeLessThan(2000);
  await expect.poll(() => theirs.line.here.map(({ name }) => name)).toEqual(["Person 1"]);
});
