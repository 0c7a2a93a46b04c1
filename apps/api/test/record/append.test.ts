import { createHash } from "node:crypto";
import { canonicalJson, RecordEntry, serviceActor } from "@cornerway/schema";
import postgres from "postgres";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { done, refuse } from "../../src/outcome.ts";
import { append } from "../../src/record/append.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { act, place } from "../support/sample.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;
let database: Database;

beforeAll(async () => {
  service = await startService();
  database = openDatabase(service.database.serviceUrl);
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const entriesOf = (projectId: string) =>
  service.owner.connection.recordEntry.findMany({
    where: { projectId },
    include: { payload: true },
    orderBy: { number: "asc" },
  });

const opened = () => ({ kind: "project opened" as const, name: "again" });

const sha256 = (...parts: Buffer[]) => createHash("sha256").update(Buffer.concat(parts)).digest();

describe("append", () => {
  it("numbers from 1 without gaps under thirty acts at once, and time never runs back", async () => {
    const projectId = await service.openProject();
    const write = () => database.act(projectId, async (tx) => done(await append(tx, projectId, serviceActor, opened)));
    await Promise.all(Array.from({ length: 30 }, write));
    const entries = await entriesOf(projectId);
    expect(entries.map(({ number }) => number)).toEqual(Array.from({ length: 36 }, (_, at) => at + 1));
    expect(entries.map(({ at }) => at.getTime())).toEqual(entries.map(({ at }) => at.getTime()).sort((a, b) => a - b));
  });

  it("writes nothing and uses no number when the act it belongs to is refused or throws", async () => {
    const projectId = await service.openProject();
    const outcome = await database.act(projectId, async (tx) => {
      await append(tx, projectId, serviceActor, opened);
      return refuse("unready");
    });
    expect(outcome).toEqual({ ok: false, refusal: { code: "unready" } });
    const thrown = database.act(projectId, async (tx) => {
      await append(tx, projectId, serviceActor, opened);
      throw new Error("half way");
    });
    await expect(thrown).rejects.toThrow("half way");
    const next = await database.act(projectId, async (tx) => done(await append(tx, projectId, serviceActor, opened)));
    expect(next).toMatchObject({ ok: true, value: { number: 7 } });
  });

  it("leaves entries whose leaves and heads anyone can work out from RFC 8785 and RFC 9162 alone", async () => {
    const projectId = await service.openProject();
    const architect = await service.signIn("architect");
    await architect.post(`/api/projects/${projectId}/draft/acts`, act(0, [place(1)])).expect(200);
    const rows = await entriesOf(projectId);
    const leaves = rows.map(({ number, at, actorId, actorRole, kind, payload }) => {
      const digest = sha256(Buffer.from(String(payload?.salt), "hex"), Buffer.from(canonicalJson(payload?.payload)));
      // The keys of the leaf in RFC 8785 order, which for these ASCII names is alphabetical.
      const facts = JSON.stringify({
        ...{
          actor: actorId,
          digest: digest.toString("hex"),
          kind,
          number,
          project: projectId,
          role: actorRole,
          time: at.toISOString(),
        },
      });
      return sha256(Buffer.of(0), Buffer.from(facts));
    });
    expect(rows.map(({ leaf }) => leaf)).toEqual(leaves.map((leaf) => leaf.toString("hex")));
    expect(rows.map(({ head }) => head)).toEqual(
      leaves.map((_, at) => rootOf(leaves.slice(0, at + 1)).toString("hex")),
    );
  });

  it("salts each payload, so that equal acts have different digests", async () => {
    const projectId = await service.openProject();
    for (let n = 0; n < 2; n += 1)
      await database.act(projectId, async (tx) => done(await append(tx, projectId, serviceActor, opened)));
    const [first, second] = (await entriesOf(projectId)).slice(-2);
    expect(first?.payloadDigest).not.toBe(second?.payloadDigest);
    expect([first?.payload?.salt.length, second?.payload?.salt.length]).toEqual([64, 64]);
  });

  it("keeps the proofs whole when a payload is withheld: the entry stays, its payload reads as null", async () => {
    const projectId = await service.openProject();
    const architect = await service.signIn("architect");
    const read = () => architect.get(`/api/projects/${projectId}/record`).expect(200);
    const before = await read();
    expect(RecordEntry.parse((before.body as unknown[])[1]).payload).not.toBeNull();
    await service.owner.connection.$executeRawUnsafe(`do $$ begin alter table record_payload disable trigger user;
      delete from record_payload where project_id = '${projectId}' and number = 2; alter table record_payload enable trigger user; end $$`);
    const { body, headers } = await read(); // nothing of what was sent before is sent again
    expect(RecordEntry.parse(body[1])).toMatchObject({ number: 2, payload: null, actor: { name: "withheld" } });
    expect(headers["etag"]).not.toBe(before.headers["etag"]);
  });

  it("tells listeners project and number, nothing else", async () => {
    const projectId = await service.openProject();
    const sql = postgres(service.database.serviceUrl, { max: 1 });
    const heard: string[] = [];
    await sql.listen("cornerway_record", (text) => heard.push(text));
    await database.act(projectId, async (tx) => done(await append(tx, projectId, serviceActor, opened)));
    await expect.poll(() => heard).toEqual([JSON.stringify({ project: projectId, number: 7 })]);
    await sql.end();
  });
});

function rootOf(hashes: readonly Buffer[]): Buffer {
  const [only] = hashes;
  if (only === undefined || hashes.length === 1) return only ?? sha256();
  let k = 1;
  while (k * 2 < hashes.length) k *= 2;
  return sha256(Buffer.of(1), rootOf(hashes.slice(0, k)), rootOf(hashes.slice(k)));
}
