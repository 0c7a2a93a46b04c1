import { randomUUID } from "node:crypto";
import { Revision } from "@cornerway/schema";
import pino from "pino";
import { afterAll, beforeAll, expect, it } from "vitest";
import { Assessor } from "../../src/assessment/assessor.ts";
import { WorkerPool } from "../../src/assessment/worker-pool.ts";
import { draw } from "../../src/services/draw.ts";
import { readDraft } from "../../src/services/read-draft.ts";
import { sendRevision } from "../../src/services/send-revision.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { act, place } from "../support/sample.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;
let database: Database;

beforeAll(async () => {
  service = await startService();
  await service.app.assessor.close(); // so that nobody but the assessors of a test takes anything up
  database = openDatabase(service.database.serviceUrl);
});
afterAll(async () => {
  await database.close();
  await service.close();
});

/** A revision sent by a process that was ended before it assessed it. */
async function leftBehind(): Promise<string> {
  const projectId = await service.openProject();
  const part = { projectId, person: service.people.architect, roles: ["architect"] as const };
  await draw(database, part, act(0, [place(1)]));
  const { number: draftNumber, contentDigest } = await readDraft(database.connection, projectId);
  await sendRevision(database, part, { id: randomUUID(), draftNumber, contentDigest, remark: null });
  return `/api/projects/${projectId}`;
}

const stateOf = async (path: string) =>
  Revision.parse((await (await service.signIn("engineer")).get(`${path}/revisions/A`).expect(200)).body);

it("what one process left is assessed by another, and written once when several take it up", async () => {
  const path = await leftBehind();
  const others = [1, 2, 3].map(
    () => new Assessor(database, new WorkerPool({ threads: 1, limitMs: 20_000 }), pino({ level: "silent" })),
  );
  for (const other of others) other.wake();
  await expect.poll(async () => (await stateOf(path)).assessment, { timeout: 20_000 }).toBe("done");
  await new Promise((resume) => setTimeout(resume, 300));
  for (const other of others) await other.close();
  const { body } = await (await service.signIn("engineer")).get(`${path}/record`);
  expect(body.filter(({ kind }: { kind: string }) => kind === "assessed")).toHaveLength(1);
});

it("an engine that does not answer is in the record as that, and the revision stays not checked", async () => {
  const path = await leftBehind();
  const pool = new WorkerPool({ threads: 1, limitMs: 200, entry: new URL("./never-answers.mjs", import.meta.url) });
  const assessor = new Assessor(database, pool, pino({ level: "silent" }));
  assessor.wake();
  await expect.poll(async () => (await stateOf(path)).assessment, { timeout: 20_000 }).toBe("failed");
  await assessor.close();
  expect(await stateOf(path)).toMatchObject({ verdict: "not checked", result: null, resultDigest: null });
  const { body } = await (await service.signIn("engineer")).get(`${path}/record`);
  expect(body.at(-1)).toMatchObject({
    kind: "assessment failed",
    payload: { letter: "A", why: "no answer within 0.2 s" },
  });
});
