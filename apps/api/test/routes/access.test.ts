import { randomUUID } from "node:crypto";
import {
  mayDo,
  mayReadEntry,
  ProjectSummary,
  RecordEntry,
  roles,
  Thread,
  type Act,
  type Role,
} from "@cornerway/schema";
import type supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { act, note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let projectId: string;
const browsers = new Map<Role | "outsider", Browser>();

beforeAll(async () => {
  service = await startService();
  projectId = await service.openProject();
  for (const who of [...roles, "outsider"] as const) browsers.set(who, await service.signIn(who));
  await browserOf("architect")
    .post(`/api/projects/${projectId}/draft/acts`, act(0, [place(1)]))
    .expect(200);
  await browserOf("engineer").post(`/api/projects/${projectId}/notes`, note("g1")).expect(201);
});
afterAll(() => service.close());

function browserOf(who: Role | "outsider"): Browser {
  const browser = browsers.get(who);
  if (browser === undefined) throw new Error(`${who} is not signed in`);
  return browser;
}

const id = randomUUID();
/** Every route of one project, with the act it is. Bodies are empty: who may is asked before what is sent is read. */
const routes: [Act, (browser: Browser, path: string) => supertest.Test][] = [
  ["read-revisions", (browser, path) => browser.get(path)],
  ["read-draft", (browser, path) => browser.get(`${path}/draft`)],
  ["draw", (browser, path) => browser.post(`${path}/draft/acts`, {})],
  ["read-revisions", (browser, path) => browser.get(`${path}/revisions`)],
  ["read-revisions", (browser, path) => browser.get(`${path}/revisions/A`)],
  ["send-revision", (browser, path) => browser.post(`${path}/revisions`, {})],
  ["read-revisions", (browser, path) => browser.get(`${path}/thread`)],
  ["write-note", (browser, path) => browser.post(`${path}/notes`, {})],
  ["settle-note", (browser, path) => browser.post(`${path}/notes/${id}/settle`, {})],
  ["make-request", (browser, path) => browser.post(`${path}/requests`, {})],
  ["read-draft", (browser, path) => browser.get(`${path}/requests/${id}/preview`)],
  ["answer-request", (browser, path) => browser.post(`${path}/requests/${id}/answer`, {})],
  ["press-stamp", (browser, path) => browser.post(`${path}/stamps`, {})],
  ["read-record", (browser, path) => browser.get(`${path}/record`)],
];

describe("the table of who may do what", () => {
  it.each(roles.flatMap((role) => routes.map(([doing, send], at) => ({ role, doing, at, send }))))(
    "is what route $at ($doing) keeps to for the $role",
    async ({ role, doing, send }) => {
      const answer = await send(browserOf(role), `/api/projects/${projectId}`);
      if (mayDo[doing].includes(role)) expect([200, 400, 404]).toContain(answer.status);
      else expectProblem(answer, "role-refused");
    },
  );

  it.each(routes.map(([doing, send], at) => ({ doing, at, send })))(
    "lets someone with no part in it see nothing at route $at ($doing), as if there were no such project",
    async ({ send }) => {
      const real = await send(browserOf("outsider"), `/api/projects/${projectId}`);
      const none = await send(browserOf("outsider"), `/api/projects/${randomUUID()}`);
      const { requestId: _ofReal, ...told } = expectProblem(real, "not-found");
      const { requestId: _ofNone, ...toldToo } = expectProblem(none, "not-found");
      expect(told).toEqual(toldToo);
      expectProblem(await send(browserOf("architect"), "/api/projects/x"), "not-found");
    },
  );
});

describe("what each role sees", () => {
  it("in GET /api/projects is the projects they have a part in, with the roles they hold there", async () => {
    const seen = async (who: Role | "outsider") =>
      z.array(ProjectSummary).parse((await browserOf(who).get("/api/projects").expect(200)).body);
    expect(await seen("outsider")).toEqual([]);
    for (const role of roles)
      expect(await seen(role)).toMatchObject([{ id: projectId, roles: [role], revision: null, waitsFor: "architect" }]);
  });

  it.each(roles)("in the record of the %s is the kinds that the table of who may see what allows", async (role) => {
    const entries = z
      .array(RecordEntry)
      .parse((await browserOf(role).get(`/api/projects/${projectId}/record`).expect(200)).body);
    const all = z
      .array(RecordEntry)
      .parse((await browserOf("architect").get(`/api/projects/${projectId}/record`)).body);
    const allowed = all.filter(({ payload }) => payload !== null && mayReadEntry([role], payload.kind));
    expect(entries).toEqual(allowed);
  });

  it("in the thread leaves notes away from the reader only", async () => {
    const notes = async (role: Role) =>
      Thread.parse((await browserOf(role).get(`/api/projects/${projectId}/thread`)).body).notes.length;
    expect(Object.fromEntries(await Promise.all(roles.map(async (role) => [role, await notes(role)])))).toEqual({
      ...{ architect: 1, engineer: 1, checker: 1, owner: 1, reader: 0 },
    });
  });

  it("ends with the membership: whoever is taken out is told there is nothing", async () => {
    const other = await service.openProject();
    await browserOf("checker").get(`/api/projects/${other}`).expect(200);
    await service.owner.connection.membership.deleteMany({ where: { projectId: other, role: "checker" } });
    expectProblem(await browserOf("checker").get(`/api/projects/${other}`), "not-found");
  });
});

describe("one person never judges a drawing they make", () => {
  it.each([
    ["architect", "engineer"],
    ["architect", "checker"],
    ["engineer", "checker"],
  ] as const)("the database refuses %s and %s in one hand", async (held, role) => {
    const { id: personId } = service.people[held];
    await expect(service.owner.connection.membership.create({ data: { projectId, personId, role } })).rejects.toThrow(
      "CW003",
    );
  });
});
