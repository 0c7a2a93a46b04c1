import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readConfig } from "../../src/config.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { clearAway } from "../../src/worker/clear-away.ts";
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

it("answers kept under a key for a day and the month-old log of webhooks are cleared away, and nothing that still counts", async () => {
  const { connection: db } = service.owner;
  const personId = service.people.owner.id;
  const answer = { personId, way: "POST /api/tokens", bodyDigest: "0".repeat(64), answer: {} };
  const inAnHour = new Date(Date.now() + 3_600_000);
  await db.repeatableAnswer.create({ data: { ...answer, key: "over", expiresAt: new Date(Date.now() - 1000) } });
  await db.repeatableAnswer.create({ data: { ...answer, key: "counts", expiresAt: inAnHour } });
  const webhook = { id: randomUUID(), projectId: await service.openProject(), personId };
  await db.webhook.create({ data: { ...webhook, url: "https://hooks.example.org/", sealedSecret: "x" } });
  const delivery = { webhookId: webhook.id, entry: 1, attempt: 1, status: 200, ms: 5 };
  const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000);
  await db.webhookDelivery.create({ data: { ...delivery, id: randomUUID(), at: daysAgo(31) } });
  await db.webhookDelivery.create({ data: { ...delivery, id: randomUUID(), at: daysAgo(29) } });
  const config = readConfig({ DATABASE_URL: service.database.serviceUrl });
  const signal = new AbortController().signal;
  await clearAway.run(null, { database, config, log: service.app.log, attempt: 1, lastTry: false, signal });
  expect((await db.repeatableAnswer.findMany()).map(({ key }) => key)).toEqual(["counts"]);
  expect(await db.webhookDelivery.count()).toBe(1);
});
