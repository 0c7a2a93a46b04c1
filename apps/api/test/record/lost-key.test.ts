import { randomUUID } from "node:crypto";
import { ConsistencyProof, ListedKey, SignedHead } from "@cornerway/schema";
import type { FastifyInstance } from "fastify";
import supertest from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { z } from "zod";
import { buildApp } from "../../src/app.ts";
import { readConfig } from "../../src/config.ts";
import { verifyBundle } from "../../src/record/verify-bundle.ts";
import { isHeadSigned } from "../../src/record/sign-head.ts";
import { insertWebhook } from "../../src/store/webhook-rows.ts";
import { seal } from "../../src/webhooks/seal.ts";
import { tellWebhook } from "../../src/webhooks/tell-webhook.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { signInAs, startService, type Browser, type TestService } from "../support/service.ts";

const [lostKey, otherKey] = ["9a".repeat(32), "bc".repeat(32)];
let before: TestService;
let after: FastifyInstance;
let owner: Browser;
let administrator: Browser;
let path: string;
let projectId: string;
let oldHead: SignedHead;
let oldBundle: string;

const keys = async () => z.array(ListedKey).parse((await supertest(after.server).get("/api/record-keys")).body);

/** The service comes up on the same database with another SECRETS_KEY, as after the first was lost. */
beforeAll(async () => {
  before = await startService({ WORKER: "apart", SECRETS_KEY: lostKey });
  projectId = await before.openProject();
  path = `/api/projects/${projectId}`;
  const then = await before.signIn("owner");
  oldHead = SignedHead.parse((await then.get(`${path}/record/head`).expect(200)).body);
  oldBundle = (await then.get(`${path}/record/bundle`).expect(200)).text;
  const environment = { DATABASE_URL: before.database.serviceUrl, WEB_ROOT: "/nowhere", WORKER: "apart" };
  after = await buildApp(readConfig({ ...environment, MAIL_FOLDER: before.mailFolder, SECRETS_KEY: otherKey }), {
    write: () => undefined,
  });
  await after.ready();
  owner = await signInAs(after, before.people.owner);
  administrator = await signInAs(after, before.people.outsider);
  await before.owner.connection.person.update({
    where: { id: administrator.person.id },
    data: { administrator: true },
  });
});
afterAll(async () => {
  await after?.close();
  await before?.close();
});

it("with the key lost nothing is signed and every answer says so; everything else goes on", async () => {
  for (const what of ["head", "bundle", "continuation?from=1"])
    expect(expectProblem(await owner.get(`${path}/record/${what}`), "signing-off").detail).toContain(
      oldHead.fingerprint,
    );
  expectProblem(await (await signInAs(after, before.people.architect)).get(`${path}/archive`), "signing-off");
  expectProblem(await administrator.post("/api/record-keys", {}), "signing-off");
  const asked = { email: `n${randomUUID().slice(0, 8)}@new.example`, role: "reader" };
  const partEndsAt = new Date(Date.now() + 86_400_000).toISOString();
  await owner.post(`${path}/invitations`, { ...asked, partEndsAt }).expect(201);
});

it("what was signed before is still found whole: it needs no secret", () => {
  expect(verifyBundle(oldBundle, { fingerprint: oldHead.fingerprint })).toMatchObject({
    whole: true,
    originProved: true,
  });
});

it("a webhook whose secret was sealed under it is stopped and says what to do", async () => {
  const { connection } = before.owner;
  const id = randomUUID();
  const row = { id, projectId, personId: before.people.owner.id, url: "https://hooks.example/in" };
  await insertWebhook(connection, { ...row, sealedSecret: seal(lostKey, id, "a secret") });
  const config = readConfig({ DATABASE_URL: before.database.serviceUrl, SECRETS_KEY: otherKey });
  const context = { database: before.owner, config, log: after.log, attempt: 1, lastTry: false };
  await tellWebhook.run({ webhookId: id, entry: 1 }, { ...context, signal: new AbortController().signal });
  const kept = await connection.webhook.findUniqueOrThrow({ where: { id } });
  expect(kept.stoppedBecause).toMatch(/sealed under another key .* make it anew/);
});

it("an administrator begins a chain anew: it vouches for what comes, proves nothing of who signed before, and continues the record", async () => {
  expectProblem(await owner.post("/api/record-keys", { lost: true }), "administrator-only");
  await administrator.post("/api/record-keys", { lost: true }).expect(201);
  const [first, second] = await keys();
  expect([first?.fingerprint, second?.follows]).toEqual([oldHead.fingerprint, null]);
  const head = SignedHead.parse((await owner.get(`${path}/record/head`).expect(200)).body);
  expect(head.fingerprint).toBe(second?.fingerprint);
  expect(isHeadSigned(head, second?.publicKey ?? "")).toBe(true);
  const continued = await owner.get(`${path}/record/continuation?from=${oldHead.number}`).expect(200);
  expect(ConsistencyProof.parse(continued.body).from).toBe(oldHead.number);
  const bundle = (await owner.get(`${path}/record/bundle`).expect(200)).text;
  expect(verifyBundle(bundle, { fingerprint: head.fingerprint })).toMatchObject({ whole: true, originProved: true });
  expect(verifyBundle(bundle, { head: { number: oldHead.number, head: oldHead.head } })).toMatchObject({ whole: true });
  expect(verifyBundle(bundle, { fingerprint: oldHead.fingerprint }).whole).toBe(false);
});

it("a key that is not lost signs the next one: its chain is not begun anew", async () => {
  expectProblem(await administrator.post("/api/record-keys", { lost: true }), "step-refused");
  await administrator.post("/api/record-keys", {}).expect(201);
  const all = await keys();
  expect(all).toHaveLength(3);
  expect(all[2]?.follows?.fingerprint).toBe(all[1]?.fingerprint);
  const bundle = (await owner.get(`${path}/record/bundle`).expect(200)).text;
  expect(verifyBundle(bundle, { fingerprint: all[1]?.fingerprint ?? "" })).toMatchObject({ whole: true });
});
