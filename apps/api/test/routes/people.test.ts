import { randomUUID } from "node:crypto";
import { ProjectPeople, RecordEntry } from "@cornerway/schema";
import type { FastifyInstance } from "fastify";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { buildApp } from "../../src/app.ts";
import { readConfig } from "../../src/config.ts";
import { openProject } from "../../src/services/open-project.ts";
import { eraseProject } from "../../src/store/erase-project.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { LiveClient } from "../support/live-client.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let other: FastifyInstance;
let origins: string[];
let owner: Browser;
let checker: Browser;
let reader: Browser;
let projectId: string;
let path: string;
const open: LiveClient[] = [];

/** The service twice on one database, as two processes are; the tests with real processes are in tests/two-process. */
beforeAll(async () => {
  service = await startService();
  const config = readConfig({ DATABASE_URL: service.database.serviceUrl, WEB_ROOT: "/nowhere", LOG_LEVEL: "silent" });
  other = await buildApp(config);
  origins = [
    await service.app.listen({ port: 0, host: "127.0.0.1" }),
    await other.listen({ port: 0, host: "127.0.0.1" }),
  ];
  [owner, checker, reader] = [
    await service.signIn("owner"),
    await service.signIn("checker"),
    await service.signIn("reader"),
  ];
});
afterAll(async () => {
  await other.close();
  await service.close();
});
beforeEach(async () => {
  projectId = await service.openProject();
  path = `/api/projects/${projectId}`;
});
afterEach(() => open.splice(0).forEach((client) => client.end()));

/** One line at each of the two. */
async function linesOf(browser: Browser): Promise<LiveClient[]> {
  const lines = origins.map((origin) => new LiveClient(origin, `${path}/live`, { cookie: browser.cookie, origin }));
  open.push(...lines);
  for (const line of lines) await line.say({ type: "resume", after: 0 });
  for (const line of lines) await expect.poll(() => line.upTo).toBe(6);
  return lines;
}

async function closeWithin2s(lines: readonly LiveClient[], fromMs: number, ...codes: number[]): Promise<void> {
  for (const line of lines) await expect.poll(() => line.closed?.code).toBeOneOf(codes);
  for (const line of lines) expect((line.closed?.atMs ?? Infinity) - fromMs).toBeLessThan(2000);
}

const record = async () => z.array(RecordEntry).parse((await owner.get(`${path}/record`).expect(200)).body);
const lastPayload = async () => (await record()).at(-1)?.payload;

describe("every socket of a person, at each of two instances, is closed within 2 s", () => {
  it("of their part being taken away, which is in the record; others stay", async () => {
    const [theirs, owners] = [await linesOf(checker), await linesOf(owner)];
    const from = Date.now();
    await owner.post(`${path}/people/${checker.person.id}/remove`, { role: "checker" }).expect(204);
    await closeWithin2s(theirs, from, 4401);
    expectProblem(await checker.get(path), "not-found");
    const { id: personId, name: personName } = checker.person;
    expect(await lastPayload()).toEqual({ kind: "role removed", personId, personName, role: "checker" });
    expect((await record()).at(-1)?.actor).toMatchObject({ role: "owner", id: owner.person.id });
    for (const line of owners) expect(line.closed).toBeUndefined();
  });

  it("of their part coming to its end, which the service itself writes down once", async () => {
    const lines = await linesOf(reader);
    const { id: personId, name: personName } = reader.person;
    const end = new Date(Date.now() + 1000);
    await owner.post(`${path}/people/${personId}/expiry`, { expiresAt: end.toISOString() }).expect(204);
    await closeWithin2s(lines, end.getTime(), 4401);
    for (const line of lines) expect(line.closed?.atMs).toBeGreaterThanOrEqual(end.getTime() - 50);
    expectProblem(await reader.get(path), "not-found");
    const expired = async () => (await record()).filter(({ kind }) => kind === "role expired");
    await expect.poll(async () => (await expired()).length).toBe(1);
    expect((await expired())[0]).toMatchObject({
      actor: { role: "service" },
      payload: { kind: "role expired", personId, personName, role: "reader" },
    });
    await new Promise((later) => setTimeout(later, 5_500)); // both instances have looked again
    expect(await expired()).toHaveLength(1);
  });

  it("of their project being erased, though it is made anew at once", async () => {
    const lines = [...(await linesOf(owner)), ...(await linesOf(checker))];
    const from = Date.now();
    await eraseProject(service.owner.connection, projectId);
    const project = { id: projectId, name: "Lock Lane", place: "Lock Lane 2, Fenquill", client: "R. Tamm" };
    await openProject(service.owner, project, [{ person: owner.person, role: "owner" }]);
    await closeWithin2s(lines, from, 4409, 4401); // 4401 where the look at who has a part, twice a second, came first
    const again = new LiveClient(origins[1] ?? "", `${path}/live`, { cookie: owner.cookie, origin: origins[1] ?? "" });
    open.push(again);
    await again.say({ type: "resume", after: 0 });
    await expect.poll(() => again.upTo).toBe(2);
  });

  it("of their session being ended from another one", async () => {
    const lines = await linesOf(await service.signIn("architect"));
    const elsewhere = await service.signIn("architect");
    const from = Date.now();
    await elsewhere.delete("/api/account/sessions").expect(204);
    await closeWithin2s(lines, from, 4401);
  });
});

describe("the engineer", () => {
  const partOf = async (personId: string) =>
    ProjectPeople.parse((await owner.get(`${path}/people`)).body).members.find(({ id }) => id === personId)?.parts;

  it("reads and does nothing else until the owner has confirmed them; the record says who did, and the licence", async () => {
    const engineer = await service.signIn("engineer");
    const where = { projectId, personId: engineer.person.id };
    await service.owner.connection.membership.updateMany({ where, data: { confirmedAt: null } });
    expect((await owner.get(path)).body).toMatchObject({ engineerToConfirm: true, waitsFor: "architect" });
    for (const rest of ["", "/draft", "/record", "/thread", "/people"]) await engineer.get(path + rest).expect(200);
    expect((await engineer.get(path)).body).toMatchObject({ awaitsConfirmation: true, roles: ["engineer"] });
    for (const rest of ["/stamps", "/requests", "/notes", `/notes/${randomUUID()}/settle`])
      expectProblem(await engineer.post(path + rest, {}), "not-confirmed");
    await engineer
      .post("/api/account/licence", { licence: { number: "SE 40117", jurisdiction: "Fenmark" } })
      .expect(204);
    const architect = await service.signIn("architect");
    expectProblem(await architect.post(`${path}/people/${engineer.person.id}/confirm`, {}), "role-refused");
    await owner.post(`${path}/people/${engineer.person.id}/confirm`, {}).expect(204);
    expect((await partOf(engineer.person.id))?.[0]?.confirmedAt).not.toBeNull();
    expect((await owner.get(path)).body).toMatchObject({ engineerToConfirm: false });
    expect(await lastPayload()).toEqual({
      ...{ kind: "role confirmed", personId: engineer.person.id, personName: engineer.person.name, role: "engineer" },
      licence: { number: "SE 40117", jurisdiction: "Fenmark" },
    });
    expectProblem(await engineer.post(`${path}/stamps`, {}), "body-invalid");
    expectProblem(await owner.post(`${path}/people/${engineer.person.id}/confirm`, {}), "not-found");
  });

  it("who is also an owner is confirmed by another one", async () => {
    const { id: personId } = service.people.engineer;
    await service.owner.connection.membership.create({ data: { projectId, personId, role: "owner" } });
    const engineer = await service.signIn("engineer");
    expectProblem(await engineer.post(`${path}/people/${personId}/confirm`, {}), "role-refused");
  });
});

describe("whoever is taken out", () => {
  it("is not the last owner", async () => {
    const remove = () => owner.post(`${path}/people/${owner.person.id}/remove`, { role: "owner" });
    expectProblem(await remove(), "last-owner");
    await owner.get(path).expect(200);
    await service.owner.connection.membership.create({
      data: { projectId, personId: service.people.outsider.id, role: "owner" },
    });
    await remove().expect(204);
    expectProblem(await owner.get(path), "not-found");
  });

  it("may have left by themselves, each their own part and never the last owner's; the record says so", async () => {
    expectProblem(await checker.post(`${path}/leave`, { role: "engineer" }), "not-found");
    expectProblem(await owner.post(`${path}/leave`, { role: "owner" }), "last-owner");
    await checker.post(`${path}/leave`, { role: "checker" }).expect(204);
    expectProblem(await checker.get(path), "not-found");
    const { id: personId, name: personName } = checker.person;
    expect(await lastPayload()).toEqual({ kind: "role removed", personId, personName, role: "checker" });
    expectProblem(await checker.post(`${path}/leave`, { role: "checker" }), "not-found");
  });

  it("was an engineer who was not confirmed yet, if they so wish", async () => {
    const engineer = await service.signIn("engineer");
    const where = { projectId, personId: engineer.person.id };
    await service.owner.connection.membership.updateMany({ where, data: { confirmedAt: null } });
    await engineer.post(`${path}/leave`, { role: "engineer" }).expect(204);
    expectProblem(await engineer.get(path), "not-found");
  });

  it("takes the invitations they made with them, and those that wait for them", async () => {
    const architect = await service.signIn("architect");
    const invite = (by: Browser, email: string) =>
      by.post(`${path}/invitations`, { email, role: "owner", partEndsAt: null });
    await service.owner.connection.membership.deleteMany({ where: { projectId, role: "owner" } });
    await invite(architect, "second@people.example").expect(201);
    await service.owner.connection.membership.create({
      data: { projectId, personId: owner.person.id, role: "owner" },
    });
    await invite(owner, "architect@people.example").expect(201);
    await invite(owner, "third@people.example").expect(201);
    await owner.post(`${path}/people/${architect.person.id}/remove`, { role: "architect" }).expect(204);
    const { invitations } = ProjectPeople.parse((await owner.get(`${path}/people`)).body);
    expect(invitations.map(({ email }) => email)).toEqual(["third@people.example"]);
    expect((await record()).slice(-3).map(({ kind }) => kind)).toEqual([
      ...["role removed", "invitation withdrawn", "invitation withdrawn"],
    ]);
  });

  it("must be there, and so must the part", async () => {
    expectProblem(await owner.post(`${path}/people/${randomUUID()}/remove`, { role: "checker" }), "not-found");
    expectProblem(await owner.post(`${path}/people/${checker.person.id}/remove`, { role: "reader" }), "not-found");
    const expiresAt = new Date(Date.now() + 86_400_000).toISOString();
    expectProblem(await owner.post(`${path}/people/${checker.person.id}/expiry`, { expiresAt }), "not-found");
  });
});
