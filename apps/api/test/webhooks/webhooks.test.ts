import { randomUUID } from "node:crypto";
import { RecordEntry, Webhook, WebhookDelivery, WebhookMade, WebhookWord } from "@cornerway/schema";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import type { TaskContext } from "../../src/queue/task.ts";
import { readConfig } from "../../src/config.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { tellWebhook } from "../../src/webhooks/tell-webhook.ts";
import { verifyWebhook } from "../support/verify-webhook.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { startListener, type Listener } from "../support/listener.ts";
import { act, note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

const settings = { SECRETS_KEY: "ab".repeat(32), WEBHOOKS_TO_LOOPBACK: "yes" };
let service: TestService;
let database: Database;
let architect: Browser;
let owner: Browser;
let projectId: string;
let path: string;
let listener: Listener;
let status = 200;

beforeAll(async () => {
  service = await startService(settings);
  database = openDatabase(service.database.serviceUrl);
  architect = await service.signIn("architect");
  owner = await service.signIn("owner");
});
afterAll(async () => {
  await database.close();
  await service.close();
});
beforeEach(async () => {
  status = 200;
  listener = await startListener((_request, response) => response.writeHead(status).end());
  projectId = await service.openProject();
  path = `/api/projects/${projectId}`;
});
afterEach(() => listener.close());

const make = async (browser: Browser) =>
  WebhookMade.parse((await browser.post(`${path}/webhooks`, { url: `${listener.url}/hook` }).expect(201)).body);
const draw = (base: number, n: number) => architect.post(`${path}/draft/acts`, act(base, [place(n)])).expect(200);
const words = () => listener.heard.map(({ body }) => WebhookWord.parse(JSON.parse(body)));
const read = async (browser: Browser) =>
  z.array(Webhook).parse((await browser.get(`${path}/webhooks`).expect(200)).body);
const last = async () => Number((await architect.get(path)).body.last);

/** One run of the task, as the queue would start it. */
async function tell(webhookId: string, entry: number, more: Partial<TaskContext> = {}): Promise<void> {
  const config = readConfig({ DATABASE_URL: service.database.serviceUrl, ...settings });
  const signal = new AbortController().signal;
  await tellWebhook.run(
    { webhookId, entry },
    { database, config, log: service.app.log, attempt: 1, lastTry: false, signal, ...more },
  );
}

describe("a webhook", () => {
  it("is told of an act once it is done, signed, through the queue", async () => {
    const { id, secret } = await make(architect);
    const { entry } = (await draw(0, 1)).body as { entry: number };
    await expect.poll(() => words().map((word) => word.entry.number)).toContain(entry);
    const at = words().findIndex((word) => word.entry.number === entry);
    const { headers, body } = listener.heard[at] ?? { headers: undefined, body: "" };
    const signature = String(headers?.["cornerway-signature"]);
    expect(verifyWebhook(String(secret), signature, body, Date.now())).toBe(true);
    expect(verifyWebhook("another secret", signature, body, Date.now())).toBe(false);
    expect(verifyWebhook(String(secret), signature, `${body} `, Date.now())).toBe(false);
    expect(verifyWebhook(String(secret), signature, body, Date.now() + 301_000)).toBe(false);
    expect(words()[at]).toMatchObject({ webhook: id, project: projectId, entry: { kind: "drawn", number: entry } });
    expect(words()[at]?.signedHead).toMatchObject({ project: projectId, number: entry, head: words()[at]?.entry.head });
    expect(words()[at]?.caution).toMatch(/preliminary until sealed/i);
    const entries = (await architect.get(String(words()[at]?.read)).expect(200)).body as { number: number }[];
    expect(entries.map(({ number }) => number)).toEqual([entry]);
  });

  it("is never told of an act that was refused", async () => {
    await make(architect);
    const before = await last();
    await architect.post(`${path}/draft/acts`, act(9, [place(1)])).expect(409);
    await draw(0, 2);
    await expect.poll(() => words().some((word) => word.entry.number === before + 1)).toBe(true);
    expect(words().every((word) => word.entry.number <= before + 1)).toBe(true);
  });

  it("tells what whoever made it may see: the owner's is not told what is drawn", async () => {
    const { id } = await make(owner);
    const { entry } = (await draw(0, 1)).body as { entry: number };
    await tell(id, entry);
    expect(words().filter((word) => word.entry.kind === "drawn")).toEqual([]);
    await architect.post(`${path}/notes`, note("g1")).expect(201);
    await tell(id, await last());
    expect(words().at(-1)?.entry).toMatchObject({ kind: "note written", revision: null });
  });

  it("has its secret shown once and sealed in its row; its log and its failures are seen by owner and architect", async () => {
    const { id, secret } = await make(owner);
    const row = await service.owner.connection.webhook.findUniqueOrThrow({ where: { id } });
    expect(row.sealedSecret).not.toContain(String(secret));
    expect(JSON.stringify(await read(architect))).not.toContain(String(secret));
    await tell(id, 1);
    const log = await architect.get(`${path}/webhooks/${id}/deliveries`).expect(200);
    expect(z.array(WebhookDelivery).parse(log.body).at(-1)).toMatchObject({ status: 200, error: null });
    expectProblem(await (await service.signIn("engineer")).get(`${path}/webhooks`), "role-refused");
    expectProblem(await architect.get(`${path}/webhooks/${randomUUID()}/deliveries`), "not-found");
  });

  it("that answers otherwise is tried again by the queue, and is stopped after five entries that did not arrive", async () => {
    const { id } = await make(owner);
    status = 500;
    for (let n = 1; n <= 5; n += 1) {
      await expect(tell(id, n)).rejects.toThrow("500");
      expect((await read(owner))[0]).toMatchObject({ failures: n - 1, stoppedAt: null });
      await tell(id, n, { attempt: 8, lastTry: true });
    }
    expect((await read(owner))[0]).toMatchObject({ failures: 5, stoppedBecause: "5 entries in a row did not arrive" });
    const heard = listener.heard.length;
    await tell(id, 1);
    expect(listener.heard).toHaveLength(heard);
    const entries = z.array(RecordEntry).parse((await owner.get(`${path}/record`)).body);
    expect(entries.at(-1)).toMatchObject({ kind: "webhook stopped", actor: { role: "service" } });
    status = 200;
    await owner.post(`${path}/webhooks/${id}/resume`, {}).expect(200);
    await tell(id, 1);
    expect((await read(owner))[0]).toMatchObject({ failures: 0, stoppedAt: null });
  });

  it("forgets failures once something arrives", async () => {
    const { id } = await make(owner);
    status = 404;
    await tell(id, 1, { attempt: 8, lastTry: true });
    expect((await read(owner))[0]?.failures).toBe(1);
    status = 204;
    await tell(id, 2);
    expect((await read(owner))[0]?.failures).toBe(0);
  });

  it("is stopped once whoever made it keeps no webhooks there any more", async () => {
    const { id } = await make(architect);
    await service.owner.connection.membership.deleteMany({ where: { projectId, personId: architect.person.id } });
    await tell(id, 1);
    expect((await read(owner))[0]?.stoppedBecause).toBe("Test architect keeps no webhooks here any more");
  });

  it("is made and ended in the record, with its host and never its address, which may hold a secret", async () => {
    const { id } = await make(owner);
    await owner.delete(`${path}/webhooks/${id}`).expect(204);
    const entries = z.array(RecordEntry).parse((await owner.get(`${path}/record`)).body);
    expect(entries.slice(-2).map(({ payload }) => payload)).toEqual([
      { kind: "webhook made", host: new URL(listener.url).host },
      { kind: "webhook ended", host: new URL(listener.url).host },
    ]);
    expectProblem(await owner.delete(`${path}/webhooks/${id}`), "not-found");
  });

  it.each([
    "http://hooks.example.org/",
    "https://10.0.0.1/",
    "https://name@hooks.example.org/",
    "https://localhost.localdomain@10.1.1.1/",
  ])("is not made for %s", async (url) => {
    const refused = expectProblem(await owner.post(`${path}/webhooks`, { url }), "address-refused");
    expect(refused.fields?.[0]?.pointer).toBe("/url");
  });

  it("an eleventh one of a project is not made", async () => {
    for (let n = 0; n < 10; n += 1) await make(owner);
    expectProblem(await owner.post(`${path}/webhooks`, { url: listener.url }), "too-many-kept");
  });
});

describe("a service without a key", () => {
  it("makes no webhooks, and says who can change that", async () => {
    const without = await startService();
    const project = await without.openProject();
    const refused = await (
      await without.signIn("owner")
    ).post(`/api/projects/${project}/webhooks`, { url: "https://a.example.org/" });
    expectProblem(refused, "webhooks-off");
    await without.close();
  });
});
