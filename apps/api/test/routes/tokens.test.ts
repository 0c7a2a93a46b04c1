import { createHash } from "node:crypto";
import { AccessTokenMade, DraftActDone, RecordEntry, scopeOfAct, type TokenScope } from "@cornerway/schema";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { payloadDigest } from "../../src/record/entry-leaf.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { act, note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let architect: Browser;
let path: string;

beforeAll(async () => {
  service = await startService();
  architect = await service.signIn("architect");
  path = `/api/projects/${await service.openProject()}`;
});
afterAll(() => service.close());

async function make(browser: Browser, scopes: TokenScope[], more: object = {}): Promise<AccessTokenMade> {
  const made = await browser.post("/api/tokens", { name: "nightly", scopes, days: 30, ...more }).expect(201);
  return AccessTokenMade.parse(made.body);
}

/** A script: it sends its token and nothing else. */
const script = (secret: string | null) => ({
  get: (address: string) => supertest(service.app.server).get(address).set("authorization", `Bearer ${secret}`),
  post: (address: string, body: object) =>
    supertest(service.app.server).post(address).set("authorization", `Bearer ${secret}`).send(body),
});

describe("an access token", () => {
  it("is shown once and kept as its SHA-256, with a part of it that may be seen", async () => {
    const { secret, prefix, id } = await make(architect, ["read"]);
    expect(secret).toMatch(/^cw_[0-9a-f]{8}_[\w-]{43}$/);
    expect(secret?.startsWith(prefix)).toBe(true);
    const row = await service.owner.connection.accessToken.findUniqueOrThrow({ where: { id } });
    expect(row.secretHash).toBe(createHash("sha256").update(String(secret)).digest("hex"));
    expect(JSON.stringify(row)).not.toContain(String(secret).slice(prefix.length + 1));
    const listed = (await architect.get("/api/tokens").expect(200)).text;
    expect(listed).toContain(prefix);
    expect(listed).not.toContain(String(secret));
  });

  it("reads within its scope, without a CSRF token, and its use is written down", async () => {
    const { secret, id } = await make(architect, ["read"]);
    const before = await service.owner.connection.accessToken.findUniqueOrThrow({ where: { id } });
    expect(before.lastUsedAt).toBeNull();
    await script(secret).get(`${path}/draft`).expect(200);
    await script(secret).get("/api/projects").expect(200);
    const after = await service.owner.connection.accessToken.findUniqueOrThrow({ where: { id } });
    expect(after.lastUsedAt).not.toBeNull();
  });

  it("does nothing outside its scopes: reading does not draw, drawing does not write notes", async () => {
    const reads = await make(architect, ["read"]);
    const draws = await make(architect, ["draw"]);
    const problem = expectProblem(
      await script(reads.secret).post(`${path}/draft/acts`, act(0, [place(1)])),
      "scope-refused",
    );
    expect(problem.detail).toBe("this needs the scope draw");
    expectProblem(await script(draws.secret).post(`${path}/notes`, note("g1")), "scope-refused");
    expectProblem(await script(draws.secret).get(`${path}/draft`), "scope-refused");
  });

  it("never does more than its person may do by hand", async () => {
    const reader = await service.signIn("reader");
    const { secret } = await make(reader, ["read", "draw", "review"]);
    expectProblem(await script(secret).get(`${path}/draft`), "role-refused");
    expectProblem(await script(secret).post(`${path}/draft/acts`, act(0, [place(1)])), "role-refused");
    const outsider = await make(await service.signIn("outsider"), ["read"]);
    expectProblem(await script(outsider.secret).get(path), "not-found");
  });

  it.each([
    ["GET", "/api/session"],
    ["GET", "/api/tokens"],
    ["POST", "/api/tokens"],
    ["GET", "/api/account"],
  ] as const)("never reaches the account: %s %s", async (method, address) => {
    const { secret } = await make(architect, ["read", "draw", "review"]);
    const send = method === "GET" ? script(secret).get(address) : script(secret).post(address, {});
    expectProblem(await send, "scope-refused");
  });

  it("never stamps, keeps no webhooks, asks nobody in and holds no live line", async () => {
    const { secret } = await make(await service.signIn("engineer"), ["read", "draw", "review"]);
    expectProblem(await script(secret).post(`${path}/stamps`, {}), "scope-refused");
    expectProblem(await script(secret).get(`${path}/live`), "scope-refused");
    const owner = await make(await service.signIn("owner"), ["read", "draw", "review"]);
    expectProblem(await script(owner.secret).post(`${path}/webhooks`, {}), "scope-refused");
    expectProblem(await script(owner.secret).post(`${path}/invitations`, {}), "scope-refused");
    expect(Object.keys(scopeOfAct)).not.toContain("press-stamp");
  });

  it("is sent alone: with a session beside it the request is refused", async () => {
    const { secret } = await make(architect, ["read"]);
    const both = architect.get("/api/projects").set("authorization", `Bearer ${secret}`);
    expectProblem(await both, "credentials-doubled");
  });

  it("is refused once withdrawn, once expired, and when it never was, and the answer says so by RFC 6750", async () => {
    const { secret, id } = await make(architect, ["read"]);
    await architect.delete(`/api/tokens/${id}`).expect(204);
    const refused = await script(secret).get("/api/projects");
    expectProblem(refused, "token-refused");
    expect(refused.headers["www-authenticate"]).toBe('Bearer error="invalid_token"');
    expectProblem(await architect.delete(`/api/tokens/${id}`), "not-found");
    const short = await make(architect, ["read"], { days: 1 });
    const past = { madeAt: new Date(Date.now() - 3 * 86_400_000), expiresAt: new Date(Date.now() - 1000) };
    await service.owner.connection.accessToken.updateMany({ where: { id: short.id }, data: past });
    expectProblem(await script(short.secret).get("/api/projects"), "token-refused");
    expectProblem(await script("cw_00000000_x").get("/api/projects"), "token-refused");
    const basic = supertest(service.app.server).get("/api/projects").set("authorization", "Basic YTpi");
    expectProblem(await basic, "token-refused");
  });

  it("belongs to one person: nobody else sees or withdraws it", async () => {
    const { id, prefix } = await make(architect, ["read"]);
    const engineer = await service.signIn("engineer");
    expect((await engineer.get("/api/tokens").expect(200)).text).not.toContain(prefix);
    expectProblem(await engineer.delete(`/api/tokens/${id}`), "not-found");
  });

  it.each([
    ["no end", { days: undefined }, "/days"],
    ["an end after a year", { days: 366 }, "/days"],
    ["no scope", { scopes: [] }, "/scopes"],
    ["a scope there is not", { scopes: ["account"] }, "/scopes/0"],
    ["no name", { name: " " }, "/name"],
  ])("with %s is not made", async (_what, more, pointer) => {
    const refused = await architect.post("/api/tokens", { name: "n", scopes: ["read"], days: 1, ...more });
    expect(expectProblem(refused, "body-invalid").fields?.[0]?.pointer).toBe(pointer);
  });

  it("says so in the record for every act it did, and the payload's digest covers it", async () => {
    const { secret, prefix } = await make(architect, ["draw", "review"]);
    const done = await script(secret)
      .post(`${path}/draft/acts`, act(0, [place(7)]))
      .expect(200);
    const { entry } = DraftActDone.parse(done.body);
    await script(secret).post(`${path}/notes`, note("g7")).expect(201);
    const read = await architect.get(`${path}/record?after=${entry - 1}`).expect(200);
    const [drawn, written] = z.array(RecordEntry).parse(read.body);
    expect(drawn?.actor).toMatchObject({ id: architect.person.id, role: "architect", token: prefix });
    expect(written?.payload).toMatchObject({ note: { author: { token: prefix } } });
    const where = { projectId_number: { projectId: path.split("/").at(-1) ?? "", number: entry } };
    const row = await service.owner.connection.recordPayload.findUniqueOrThrow({ where, include: { entry: true } });
    const payload = RecordEntry.shape.payload.parse(row.payload);
    if (payload === null) throw new Error("withheld");
    expect(row.entry.payloadDigest).toBe(payloadDigest(payload, row.salt, prefix));
    expect(row.entry.payloadDigest).not.toBe(payloadDigest(payload, row.salt, undefined));
  });

  it("tried wrongly more than 30 times a minute from one place is told to wait", async () => {
    const answers = [];
    for (let n = 0; n < 35; n += 1) answers.push((await script(`cw_wrong_${n}`).get("/api/projects")).status);
    expect(answers.at(0)).toBe(401);
    expect(answers.at(-1)).toBe(429);
    const { secret } = await make(architect, ["read"]);
    await script(secret).get("/api/projects").expect(200);
  });
});

describe("more than 20 tokens of one person", () => {
  it("are not kept", async () => {
    const checker = await service.signIn("checker");
    for (let n = 0; n < 20; n += 1) await make(checker, ["read"]);
    expectProblem(await checker.post("/api/tokens", { name: "one more", scopes: ["read"], days: 1 }), "too-many-kept");
  });
});
