import { randomUUID } from "node:crypto";
import { ProjectPeople, ReaderLinkMade, RecordEntry } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expireParts } from "../../src/services/expire-parts.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { LiveClient } from "../support/live-client.ts";
import { act, note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";
import { Visitor } from "../support/visitor.ts";

let service: TestService;
let origin: string;
let owner: Browser;
let architect: Browser;
let projectId: string;
let path: string;

const dayMs = 86_400_000;
const inDays = (days: number) => new Date(Date.now() + days * dayMs).toISOString();

beforeAll(async () => {
  service = await startService({ LOG_LEVEL: "debug", SECRETS_KEY: "cd".repeat(32) });
  origin = await service.app.listen({ port: 0, host: "127.0.0.1" });
  [owner, architect] = [await service.signIn("owner"), await service.signIn("architect")];
});
afterAll(() => service.close());
beforeEach(async () => {
  projectId = await service.openProject();
  path = `/api/projects/${projectId}`;
});

const counter = "Building office of Fenquill, counter 3";

async function make(by: Browser, more: { name?: string; expiresAt?: string } = {}): Promise<ReaderLinkMade> {
  const body = { name: counter, expiresAt: inDays(30), ...more };
  return ReaderLinkMade.parse((await by.post(`${path}/reader-links`, body).expect(201)).body);
}

const enter = (link: string) => new Visitor(service).enter(link, { as: "reader" });
const people = async (by: Browser) => ProjectPeople.parse((await by.get(`${path}/people`).expect(200)).body);
const record = async (by: Browser) => z.array(RecordEntry).parse((await by.get(`${path}/record`).expect(200)).body);
const readerKinds = async () =>
  (await record(owner)).map(({ kind }) => kind).filter((kind) => kind.includes("reader link"));

describe("a reader's link", () => {
  it("opens for a cookie, says for whom and from whom it is, and lets them read without an account", async () => {
    const { link, path: address } = await make(owner);
    expect(address).toMatch(/^\/reader#[\w-]{43}$/);
    const visitor = new Visitor(service);
    const opened = await visitor.open(address);
    expect(opened.body).toEqual({
      ...{ kind: "reader-link", projectName: "Lock Lane", name: counter, madeBy: "Test owner" },
      ...{ expiresAt: link.expiresAt, signedInAs: null },
    });
    expect(visitor.lastCookies[0]).toMatch(
      /^cornerway_link=[\w-]{43}; Max-Age=1800; Path=\/api\/link; HttpOnly; SameSite=Strict$/,
    );
    const reader = await visitor.enter(address, { as: "reader" });
    expect(reader.session.person).toMatchObject({ id: link.id, name: counter, byLink: true, administrator: false });
    await reader.get(path).expect(200);
    expect((await reader.get("/api/projects").expect(200)).body).toHaveLength(1);
  });

  it("is kept neither in the database nor in the log: neither its secret nor the ticket", async () => {
    const { path: address } = await make(owner);
    const visitor = new Visitor(service);
    await visitor.open(address);
    const ticket = visitor.cookies.get("cornerway_link") ?? "none";
    await visitor.use({ as: "reader" });
    const secret = address.split("#")[1] ?? "none";
    const rows = await service.owner.connection.oneTimeLink.findMany({ where: { projectId } });
    for (const word of [secret, ticket]) {
      expect(JSON.stringify(rows)).not.toContain(word);
      expect(service.log.join("\n")).not.toContain(word);
    }
  });

  it("works again until it ends, in several browsers at once, and each opening is in the record", async () => {
    const { link, path: address } = await make(architect);
    const [first, second] = [await enter(address), await enter(address)];
    await first.get(path).expect(200);
    await second.get(path).expect(200);
    const again = new Visitor(service, first);
    await again.enter(address, { as: "reader" }); // the browser that reads by it already
    expect(await readerKinds()).toEqual(["reader link made", "reader link opened", "reader link opened"]);
    const listed = (await people(owner)).readerLinks;
    expect(listed).toMatchObject([{ id: link.id, name: counter, madeBy: "Test architect", opened: 2 }]);
    expect((await record(owner)).at(-1)).toMatchObject({
      actor: { id: link.id, name: counter, role: "reader" },
      payload: { kind: "reader link opened", personId: link.id, name: counter },
    });
  });

  it("shows what a reader may see and nothing else: no draft, no note, no price, no address, no other link", async () => {
    await architect.post(`${path}/draft/acts`, act(0, [place(1)])).expect(200);
    await architect.post(`${path}/notes`, note("g1")).expect(201);
    const reader = await enter((await make(owner)).path);
    expectProblem(await reader.get(`${path}/draft`), "role-refused");
    expectProblem(await reader.get(`${path}/cost-book`), "role-refused");
    expect((await reader.get(`${path}/notes`).expect(200)).body).toEqual([]);
    const kinds = (await record(reader)).map(({ kind }) => kind);
    expect(kinds).not.toContain("drawn");
    expect(kinds.filter((kind) => kind.includes("reader link"))).toEqual([]);
    const seen = await people(reader);
    expect(seen).toMatchObject({ invitations: [], readerLinks: [] });
    expect(seen.members.every(({ email }) => email === null)).toBe(true);
    expect((await people(owner)).members.map(({ name }) => name)).not.toContain(counter);
  });

  it("writes nothing, not even what a reader with an account may, and has no account", async () => {
    const reader = await enter((await make(owner)).path);
    const before = (await record(owner)).length;
    expectProblem(await reader.post(`${path}/plan-check/${randomUUID()}/steps`, {}), "reading-only");
    expectProblem(await reader.post(`${path}/leave`, { role: "reader" }), "reading-only");
    expectProblem(await reader.post("/api/account/name", { name: "Someone" }), "reading-only");
    expectProblem(await reader.get("/api/account"), "reading-only");
    expectProblem(await reader.post("/api/tokens", {}), "reading-only");
    expect(await record(owner)).toHaveLength(before);
  });

  it("ends at once when it is withdrawn: session, socket and secret", async () => {
    const { link, path: address } = await make(owner);
    const reader = await enter(address);
    const line = new LiveClient(origin, `${path}/live`, { origin, cookie: reader.cookie });
    await line.say({ type: "resume", after: 0 });
    await expect.poll(() => line.upTo).toBeGreaterThanOrEqual(0);
    await owner.delete(`${path}/reader-links/${link.id}`).expect(204);
    expectProblem(await reader.get(path), "not-signed-in");
    await expect.poll(() => line.closed !== undefined, { timeout: 5000 }).toBe(true);
    expectProblem(await new Visitor(service).open(address), "link-gone");
    expectProblem(await owner.delete(`${path}/reader-links/${link.id}`), "not-found");
    expect((await people(owner)).readerLinks).toEqual([]);
    expect(await readerKinds()).toEqual(["reader link made", "reader link opened", "reader link ended"]);
  });

  it("is good for nothing from its last moment on, which is then written down once", async () => {
    const { link, path: address } = await make(owner);
    const reader = await enter(address);
    const past = new Date(Date.now() - 1000);
    const { membership, oneTimeLink } = service.owner.connection;
    await membership.updateMany({ where: { personId: link.id }, data: { expiresAt: past } });
    await oneTimeLink.updateMany({ where: { personId: link.id }, data: { expiresAt: past } });
    expectProblem(await reader.get(path), "not-found");
    expectProblem(await new Visitor(service).open(address), "link-gone");
    await Promise.all([expireParts(service.owner), expireParts(service.owner)]);
    expect(await readerKinds()).toEqual(["reader link made", "reader link opened", "reader link ended"]);
  });

  it("is gone for whoever opened it before it was withdrawn and uses it after", async () => {
    const { link, path: address } = await make(owner);
    const visitor = new Visitor(service);
    await visitor.open(address);
    await owner.delete(`${path}/reader-links/${link.id}`).expect(204);
    expectProblem(await visitor.use({ as: "reader" }), "link-gone");
  });

  it("ends with the part of whoever made it, who knows its secret", async () => {
    const { path: address } = await make(architect);
    await owner.post(`${path}/people/${architect.person.id}/remove`, { role: "architect" }).expect(204);
    expectProblem(await new Visitor(service).open(address), "link-gone");
    expect(await readerKinds()).toEqual(["reader link made", "reader link ended"]);
  });

  it("is made for a day to come within a year, with a name, by whoever asks people in, and for no more than twenty at a time", async () => {
    for (const expiresAt of [inDays(-1), inDays(367)])
      expect(
        expectProblem(await owner.post(`${path}/reader-links`, { name: counter, expiresAt }), "body-invalid").fields,
      ).toMatchObject([{ pointer: "/expiresAt" }]);
    expectProblem(await owner.post(`${path}/reader-links`, { name: " ", expiresAt: inDays(1) }), "body-invalid");
    const engineer = await service.signIn("engineer");
    expectProblem(await engineer.post(`${path}/reader-links`, { name: counter, expiresAt: inDays(1) }), "role-refused");
    expect(await readerKinds()).toEqual([]);
    for (let made = 0; made < 20; made += 1) await make(owner);
    expectProblem(await owner.post(`${path}/reader-links`, { name: counter, expiresAt: inDays(1) }), "too-many-kept");
  });

  it("lets nobody sign in as its reader, nor have a new password for them", async () => {
    const { link } = await make(owner);
    const email = `${link.id}@reader.invalid`;
    const visitor = new Visitor(service);
    expectProblem(await visitor.send("post", "/api/session", { email, password: "" }), "body-invalid");
    expectProblem(await visitor.send("post", "/api/session", { email, password: "anything" }), "sign-in-refused");
    await visitor.send("post", "/api/new-password", { email });
    const links = await service.owner.connection.oneTimeLink.findMany({ where: { personId: link.id } });
    expect(links.map(({ kind }) => kind)).toEqual(["reader-link"]);
  });
});
