import { randomUUID } from "node:crypto";
import { engineVersion } from "@cornerway/engine";
import { AssessmentRun, Revision } from "@cornerway/schema";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { assessmentSteps } from "../../src/assessment/assess-scheme.ts";
import { WorkerPool } from "../../src/assessment/worker-pool.ts";
import { readConfig } from "../../src/config.ts";
import { openPool } from "../../src/database/open-pool.ts";
import { draw } from "../../src/services/draw.ts";
import { readDraft } from "../../src/services/read-draft.ts";
import { sendRevision } from "../../src/services/send-revision.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { AssessRevision } from "../../src/worker/assess-revision.ts";
import { keepRunning } from "../../src/worker/keep-running.ts";
import { RollCall } from "../../src/worker/roll-call.ts";
import { listenForStops } from "../../src/worker/stop-listener.ts";
import { startWorker } from "../../src/worker/start-worker.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { act, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let database: Database;
let engineer: Browser;
const open: (() => Promise<unknown>)[] = [];

beforeAll(async () => {
  service = await startService({ WORKER: "apart" });
  database = openDatabase(service.database.serviceUrl);
  engineer = await service.signIn("engineer");
});
afterEach(async () => {
  for (const close of open.splice(0).toReversed()) await close();
});
afterAll(async () => {
  await database.close();
  await service.close();
});

/** A revision sent, with no worker to assess it. */
async function sent(): Promise<string> {
  const projectId = await service.openProject();
  const part = { projectId, person: service.people.architect, roles: ["architect"] as const };
  await draw(database, part, act(0, [place(1)]));
  const { number: draftNumber, contentDigest } = await readDraft(database.connection, projectId);
  const outcome = await sendRevision(database, part, { id: randomUUID(), draftNumber, contentDigest, remark: null });
  expect(outcome.ok).toBe(true);
  return `/api/projects/${projectId}`;
}

const revision = async (path: string) => Revision.parse((await engineer.get(`${path}/revisions/A`).expect(200)).body);
const run = async (path: string) =>
  AssessmentRun.parse((await engineer.get(`${path}/revisions/A/assessment`).expect(200)).body);
const expectState = (path: string, state: AssessmentRun["state"]) =>
  expect.poll(async () => (await run(path)).state, { timeout: 120_000 }).toBe(state);
const kinds = async (path: string): Promise<string[]> =>
  (await engineer.get(`${path}/record`)).body.map(({ kind }: { kind: string }) => kind);

async function wholeWorker(): Promise<void> {
  const config = readConfig({ DATABASE_URL: service.database.serviceUrl });
  const worker = await startWorker({ config, database, log: service.app.log, onDone: () => undefined });
  open.push(() => worker.close());
}

/** A worker whose engine is a file beside this one. */
async function workerWith(file: string, limitMs: number): Promise<WorkerPool> {
  const config = readConfig({ DATABASE_URL: service.database.serviceUrl });
  const { log } = service.app;
  const threads = new WorkerPool({ threads: 1, limitMs, entry: new URL(`../assessment/${file}`, import.meta.url) });
  const pool = openPool(service.database.serviceUrl, 4);
  const task = new AssessRevision(threads);
  const rollCall = new RollCall(database.connection, log);
  const stops = await listenForStops(service.database.serviceUrl, {
    ...{ stop: (key) => task.stop(key), heardAgain: () => undefined, log },
  });
  const context = { database, config, log };
  const stop = await keepRunning({ tasks: [task], atOnce: 1 }, { pool, context, rollCall, onDone: () => undefined });
  open.push(async () => {
    await threads.close();
    await stop();
    await stops.close();
    await rollCall.close();
    await pool.end();
  });
  return threads;
}

describe("a revision", () => {
  it("waits while there is no worker, and is assessed once when three come up", async () => {
    const path = await sent();
    expect(await run(path)).toMatchObject({ attempt: 1, state: "waiting", startedAt: null, steps: { done: 0 } });
    await Promise.all([wholeWorker(), wholeWorker(), wholeWorker()]);
    await expectState(path, "done");
    expect(await revision(path)).toMatchObject({
      assessment: "done",
      resultDigest: expect.stringMatching(/^[0-9a-f]{64}$/),
    });
    expect((await kinds(path)).filter((kind) => kind === "assessed")).toHaveLength(1);
    expect(await run(path)).toMatchObject({
      steps: { done: assessmentSteps, of: assessmentSteps },
      leftMs: null,
      engineVersion,
    });
  });

  it("that waits without a job, as one sent by an older release, is taken up by a worker that starts", async () => {
    const path = await sent();
    await service.owner.connection.$executeRaw`delete from graphile_worker._private_jobs`;
    await wholeWorker();
    await expectState(path, "done");
  });
});

describe("an engine that does not answer", () => {
  it("is tried once more, then in the record as that; the revision stays not checked, and can be assessed again", async () => {
    const path = await sent();
    await workerWith("never-answers.mjs", 200);
    await expectState(path, "failed");
    expect(await revision(path)).toMatchObject({ verdict: "not checked", result: null, resultDigest: null });
    expect(await run(path)).toMatchObject({ attempt: 1, why: "no answer within 0.2 s" });
    for (const close of open.splice(0).toReversed()) await close();

    expect((await engineer.post(`${path}/revisions/A/assessment/again`).expect(202)).body).toMatchObject({
      ...{ attempt: 2, state: "waiting" },
    });
    expectProblem(await engineer.post(`${path}/revisions/A/assessment/again`), "assessment-moved-on");
    await wholeWorker();
    await expectState(path, "done");
    expect(await revision(path)).toMatchObject({ assessment: "done" });
    expect((await kinds(path)).slice(-3)).toEqual(["assessment failed", "assessment asked for", "assessed"]);
    expectProblem(await engineer.post(`${path}/revisions/A/assessment/again`), "assessment-moved-on");
  });

  it("is ended when architect or engineer stop it: its thread goes, and nothing of it is written later", async () => {
    const path = await sent();
    const threads = await workerWith("never-answers.mjs", 60_000);
    await expect.poll(() => threads.state.running, { timeout: 120_000 }).toBe(1);
    expect((await engineer.post(`${path}/revisions/A/assessment/stop`).expect(200)).body).toMatchObject({
      ...{ state: "failed", why: "stopped by Test engineer" },
    });
    await expect.poll(() => threads.state.threads).toBe(0);
    expectProblem(await engineer.post(`${path}/revisions/A/assessment/stop`), "assessment-moved-on");
    expect((await kinds(path)).at(-1)).toBe("assessment failed");
    const { body } = await engineer.get(`${path}/record`);
    expect(body.at(-1).actor.role).toBe("engineer");
  });
});

describe("a job that was given up because its worker ended under it each time", () => {
  it("leaves its revision failed, not waiting for ever", async () => {
    const path = await sent();
    await service.owner.connection.$executeRaw`update graphile_worker._private_jobs set attempts = max_attempts`;
    await wholeWorker();
    await expectState(path, "failed");
    expect((await run(path)).why).toBe("given up: the worker ended under it each time");
  });
});

describe("a result", () => {
  it("of a newer engine is told as unreadable, without its digest, and nothing fails", async () => {
    const path = await sent();
    await wholeWorker();
    await expectState(path, "done");
    await alter(path, { engine_version: "9.0.0" });
    expect(await revision(path)).toMatchObject({ assessment: "unreadable", result: null, resultDigest: null });
    expect(await run(path)).toMatchObject({ state: "unreadable", engineVersion: "9.0.0" });
    expectProblem(await engineer.post(`${path}/revisions/A/assessment/again`), "assessment-moved-on");
  });

  it("of a form that is not read here is told as unreadable too", async () => {
    const path = await sent();
    await wholeWorker();
    await expectState(path, "done");
    await alter(path, { engine_version: "0.1.0", result: `{"of":"another form"}` });
    expect(await revision(path)).toMatchObject({ assessment: "unreadable", result: null, verdict: "not checked" });
  });
});

/** What an older or newer release would have written. */
async function alter(path: string, columns: Record<string, string>): Promise<void> {
  const projectId = path.split("/").at(-1);
  const set = Object.entries(columns).map(([name, value]) => `"${name}" = '${value}'`);
  await service.owner.connection.$executeRawUnsafe(
    `do $$ begin alter table assessment disable trigger user; update assessment set ${set.join(", ")} where project_id = '${projectId}'; alter table assessment enable trigger user; end $$`,
  );
}
