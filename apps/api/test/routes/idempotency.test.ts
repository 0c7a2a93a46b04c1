import { randomUUID } from "node:crypto";
import { AccessTokenMade } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectProblem } from "../support/expect-problem.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let owner: Browser;

beforeAll(async () => {
  service = await startService();
  owner = await service.signIn("owner");
});
afterAll(() => service.close());

const body = { name: "reports", scopes: ["read"], days: 7 };
const make = (key: string, sent: object = body, browser: Browser = owner) =>
  browser.post("/api/tokens", sent).set("idempotency-key", key);

describe("Idempotency-Key", () => {
  it("gives the first answer again for the same body, without the secret, and does nothing twice", async () => {
    const key = randomUUID();
    const first = AccessTokenMade.parse((await make(key).expect(201)).body);
    const again = AccessTokenMade.parse((await make(key).expect(201)).body);
    expect(again).toEqual({ ...first, secret: null });
    expect(await service.owner.connection.accessToken.count({ where: { personId: owner.person.id } })).toBe(1);
  });

  it("is the same key in quotation marks, as a structured field has it", async () => {
    const key = randomUUID();
    const first = AccessTokenMade.parse((await make(`"${key}"`).expect(201)).body);
    expect(AccessTokenMade.parse((await make(key).expect(201)).body).id).toBe(first.id);
  });

  it("refuses another body under the same key", async () => {
    const key = randomUUID();
    await make(key).expect(201);
    expectProblem(await make(key, { ...body, name: "others" }), "key-reused");
  });

  it("sent at once from two places makes one", async () => {
    const key = randomUUID();
    const before = await service.owner.connection.accessToken.count();
    const answers = await Promise.all([make(key), make(key), make(key), make(key)]);
    const ids = answers.map((answer) => AccessTokenMade.parse(answer.body));
    expect(new Set(ids.map(({ id }) => id)).size).toBe(1);
    expect(ids.filter(({ secret }) => secret !== null)).toHaveLength(1);
    expect(await service.owner.connection.accessToken.count()).toBe(before + 1);
  });

  it("is one person's: another's same key is another key", async () => {
    const key = randomUUID();
    const mine = AccessTokenMade.parse((await make(key).expect(201)).body);
    const theirs = await make(key, body, await service.signIn("engineer")).expect(201);
    expect(AccessTokenMade.parse(theirs.body).id).not.toBe(mine.id);
  });

  it("whose request was refused may be sent again mended", async () => {
    const key = randomUUID();
    expectProblem(await make(key, { ...body, days: 0 }), "body-invalid");
    await make(key).expect(201);
  });

  it("is forgotten after a day", async () => {
    const key = randomUUID();
    const first = AccessTokenMade.parse((await make(key).expect(201)).body);
    const row = await service.owner.connection.repeatableAnswer.findFirstOrThrow({ where: { key } });
    expect(row.expiresAt.getTime() - Date.now()).toBeGreaterThan(23.9 * 3_600_000);
    expect(row.expiresAt.getTime() - Date.now()).toBeLessThan(24.1 * 3_600_000);
    expect(JSON.stringify(row)).not.toContain(String(first.secret));
    await service.owner.connection.repeatableAnswer.updateMany({ where: { key }, data: { expiresAt: new Date(0) } });
    expect(AccessTokenMade.parse((await make(key).expect(201)).body).id).not.toBe(first.id);
  });

  it("starts one project however often that is sent", async () => {
    const { id } = service.people.checker;
    await service.owner.connection.person.updateMany({ where: { id }, data: { administrator: true } });
    const administrator = await service.signIn("checker");
    const project = { name: "Lock Lane", place: "Fenquill", client: "R. Tamm", ownPart: "architect" };
    const key = randomUUID();
    const start = (sent: object) => administrator.post("/api/projects", sent).set("idempotency-key", key);
    const first = await start(project).expect(201);
    expect((await start(project).expect(201)).body).toEqual(first.body);
    expectProblem(await start({ ...project, name: "Quay Rise" }), "key-reused");
    expect((await administrator.get("/api/projects").expect(200)).body).toHaveLength(1);
  });

  it.each([
    ["an empty one", '""'],
    ["a space", "a b"],
    ["too long", "k".repeat(256)],
  ])("refuses %s", async (_what, key) => {
    expect(expectProblem(await make(key), "body-invalid").fields?.[0]?.pointer).toBe("/headers/idempotency-key");
  });

  it("is taken by every route that makes something under an id of the service", async () => {
    const document = JSON.stringify(service.app.swagger());
    for (const id of ["makeToken", "makeWebhook", "startProject"])
      expect(document).toMatch(new RegExp(`"operationId":"${id}".{0,2500}idempotency-key`));
  });
});
