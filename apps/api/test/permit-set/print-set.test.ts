import { createHash, randomUUID } from "node:crypto";
import { PermitSetRun } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readConfig } from "../../src/config.ts";
import type { TaskContext } from "../../src/queue/task.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { printSet } from "../../src/worker/print-set.ts";
import { openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { place, post } from "../support/sample.ts";
import type { TestService } from "../support/service.ts";

let service: TestService;
let room: ReviewRoom;
let database: Database;
let sets: string;

beforeAll(async () => {
  service = await startReviewService();
  database = openDatabase(service.database.serviceUrl);
  room = await openReviewRoom(service, await signInAll(service));
  await room.send([place(1), place(2), { kind: "post.set", post: post(1) }]);
  sets = `${room.path}/sets`;
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const ask = async (units: "SI" | "US" = "SI") => {
  const body = { id: randomUUID(), letter: "A", units };
  return PermitSetRun.parse((await room.by.engineer.post(sets, body).expect(202)).body);
};
const read = async (id: string) => PermitSetRun.parse((await room.by.reader.get(`${sets}/${id}`).expect(200)).body);
const fileOf = async (id: string): Promise<Buffer> =>
  Buffer.from(
    (
      await room.by.reader
        .get(`${sets}/${id}/file`)
        .buffer(true)
        .parse((response, done) => {
          const parts: Buffer[] = [];
          response.on("data", (part: Buffer) => parts.push(part));
          response.on("end", () => done(null, Buffer.concat(parts)));
        })
        .expect(200)
    ).body,
  );

/** The task as a worker runs it. */
const run = (id: string, lastTry = false, signal = new AbortController().signal) => {
  const config = readConfig({ DATABASE_URL: service.database.serviceUrl, WEB_ROOT: "/nowhere" });
  const context: TaskContext = { database, config, log: service.app.log, attempt: 1, lastTry, signal };
  return printSet.run({ projectId: room.projectId, id }, context);
};
const digestOf = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");

describe("a permit set that is asked for", () => {
  it("waits with the record entry it is printed up to, and asking twice is one", async () => {
    const body = { id: randomUUID(), letter: "A", units: "US" };
    const first = await room.by.engineer.post(sets, body).expect(202);
    const second = await room.by.engineer.post(sets, body).expect(202);
    expect(second.body).toEqual(first.body);
    expect(first.body).toMatchObject({ state: "waiting", pages: { done: 0, of: 0 }, why: null });
    await room.by.engineer.post(sets, { ...body, units: "SI" }).expect(409);
  });

  it("has the same bytes as another of the same revision, head and units", async () => {
    const [one, other] = [await ask(), await ask()];
    expect(one.upTo).toBe(other.upTo);
    await run(one.id);
    await run(other.id);
    const bytes = await fileOf(one.id);
    expect(bytes.subarray(0, 8).toString("latin1")).toBe("%PDF-1.7");
    expect(digestOf(await fileOf(other.id))).toBe(digestOf(bytes));
    expect((await read(other.id)).setDigest).toBe((await read(one.id)).setDigest);
  });

  it("stands in the record after the head it was printed from, with its digest", async () => {
    const set = await ask("US");
    await run(set.id);
    const { setDigest, pages } = await read(set.id);
    const record = await room.by.reader.get(`${room.path}/record?after=${set.upTo}`).expect(200);
    const printed = record.body.filter(({ kind }: { kind: string }) => kind === "set printed").at(-1);
    expect(printed.number).toBeGreaterThan(set.upTo);
    expect(printed.payload).toMatchObject({ letter: "A", units: "US", upTo: set.upTo, setDigest, pages: pages.of });
  });

  it("is printed once, however often its job runs", async () => {
    const set = await ask();
    await run(set.id);
    const before = await read(set.id);
    await run(set.id);
    expect(await read(set.id)).toEqual(before);
  });

  it("stays stopped: nothing is printed and nothing written of it", async () => {
    const set = await ask();
    const stopped = await room.by.architect.post(`${sets}/${set.id}/stop`, {}).expect(200);
    expect(stopped.body).toMatchObject({ state: "stopped", why: expect.stringContaining("stopped by") });
    await run(set.id);
    expect((await read(set.id)).state).toBe("stopped");
    await room.by.reader.get(`${sets}/${set.id}/file`).expect(404);
    await room.by.architect.post(`${sets}/${set.id}/stop`, {}).expect(409);
  });

  it("ends its thread when it is stopped while it prints", async () => {
    const set = await ask();
    const running = run(set.id);
    await room.by.architect.post(`${sets}/${set.id}/stop`, {}).expect(200);
    await running;
    expect((await read(set.id)).state).toBe("stopped");
  });

  it("is left for another worker when its own is ended, and has failed at the last try", async () => {
    const set = await ask();
    const ended = AbortSignal.abort();
    await expect(run(set.id, false, ended)).rejects.toThrow("stopped");
    expect((await read(set.id)).state).toBe("waiting");
    await run(set.id, true, ended);
    expect(await read(set.id)).toMatchObject({ state: "failed", why: "stopped" });
  });

  it("is refused where the scheme is not the one the revision was sent on", async () => {
    const set = await ask();
    await service.owner.connection.$executeRawUnsafe(`alter table "revision" disable trigger user`);
    await service.owner.connection.$executeRaw`
      update "revision" set "scheme" = jsonb_set("scheme", '{posts,0,topZUm}', '2500000'), "content_digest" = repeat('0', 64)
      where "project_id" = ${room.projectId}::uuid`;
    await run(set.id);
    const { state, why } = await read(set.id);
    expect(state).toBe("refused");
    expect(why).toContain("revision A was sent on content 0000");
    await room.by.engineer.get(`${sets}/${set.id}/file`).expect(404);
  });

  it("is asked for by whoever works in the project, on a revision that is there", async () => {
    const body = { id: randomUUID(), letter: "A", units: "SI" };
    await room.by.reader.post(sets, body).expect(403);
    await room.by.engineer.post(sets, { ...body, letter: "Q" }).expect(400);
    await room.by.engineer.post(sets, { ...body, units: "cubits" }).expect(400);
  });
});
