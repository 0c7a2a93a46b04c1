import { randomUUID } from "node:crypto";
import postgres from "postgres";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readDraft } from "../../apps/api/src/services/read-draft.ts";
import { draw } from "../../apps/api/src/services/draw.ts";
import { sendRevision } from "../../apps/api/src/services/send-revision.ts";
import { openDatabase, type Database } from "../../apps/api/src/store/database.ts";
import { act, place } from "../../apps/api/test/support/sample.ts";
import { freshDatabase, type FreshDatabase } from "../support/fresh-database.ts";
import { startProcess, type ServiceProcess } from "./service-process.ts";
import { openSharedProject } from "./shared-project.ts";

const projectId = randomUUID();
let database: FreshDatabase;
let owner: Database;
const processes: ServiceProcess[] = [];

beforeAll(async () => {
  database = await freshDatabase();
  owner = openDatabase(database.ownerUrl);
  await openSharedProject(owner, projectId, 1);
});
afterAll(async () => {
  for (const { process } of processes) process.kill("SIGKILL");
  await owner.close();
  await database.drop();
});

async function startWorkerProcess(): Promise<ServiceProcess> {
  const started = await startProcess(database.serviceUrl, {}, "worker");
  processes.push(started);
  return started;
}

/** Longer than a worker is waited for that has not been heard of, 10 s, and the next time others look, 2 s. */
const takenOverMs = 20_000;

it("the job of a worker killed at its work is taken over by another within seconds, and done once", async () => {
  await send();
  const held = await holdProject(); // so that the answer cannot be written yet
  const killed = await startWorkerProcess();
  await expect.poll(jobs).toEqual([{ attempts: 1, running: true }]);
  await startWorkerProcess();
  killed.process.kill("SIGKILL");
  await killed.ended;
  const killedAtMs = Date.now();
  held.release();
  await expect.poll(entriesOfAnswers, { timeout: takenOverMs, interval: 100 }).toEqual(["assessed"]);
  console.log(`taken over and done ${((Date.now() - killedAtMs) / 1000).toFixed(1)} s after the kill`);
  await expect.poll(jobs).toEqual([]);
  expect(await entriesOfAnswers()).toEqual(["assessed"]);
});

async function send(): Promise<void> {
  const person = await owner.connection.person.findFirstOrThrow({ where: { name: "Person 0" } });
  const roles = ["architect"] as const;
  const part = { projectId, person: { id: person.id, name: person.name, email: person.email }, roles };
  await draw(owner, part, act(0, [place(1)]));
  const { number: draftNumber, contentDigest } = await readDraft(owner.connection, projectId);
  const sent = await sendRevision(owner, part, { id: randomUUID(), draftNumber, contentDigest, remark: null });
  expect(sent.ok).toBe(true);
}

/** Keeps everyone else from writing to the project until released. */
async function holdProject(): Promise<{ release: () => void }> {
  const released = new AbortController();
  const sql = postgres(database.ownerUrl, { max: 1 });
  const hold = async (held: () => void) => {
    await sql.begin(async (tx) => {
      await tx`select 1 from "project" where "id" = ${projectId} for update`;
      held();
      await new Promise((resume) => released.signal.addEventListener("abort", resume));
    });
    await sql.end();
  };
  await new Promise<void>((held, failed) => void hold(held).catch(failed));
  return { release: () => released.abort() };
}

/** What the queue holds of assessments. */
const jobs = () =>
  owner.connection.$queryRaw`
    select "attempts", "locked_at" is not null as "running" from graphile_worker.jobs
    where "task_identifier" = 'assess revision'`;

async function entriesOfAnswers(): Promise<string[]> {
  const kind = { startsWith: "assess" };
  return (await owner.connection.recordEntry.findMany({ where: { projectId, kind } })).map((entry) => entry.kind);
}
