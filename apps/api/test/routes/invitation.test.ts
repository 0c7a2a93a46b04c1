import { randomUUID } from "node:crypto";
import { InvitationMade, ProjectPeople, RecordEntry, type NewInvitation, type ProblemCode } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { lettersIn, linkIn } from "../support/letters.ts";
import { act, place } from "../support/sample.ts";
import { password, startService, type Browser, type TestService } from "../support/service.ts";
import { Visitor } from "../support/visitor.ts";

let service: TestService;
let owner: Browser;
let architect: Browser;
let outsider: Browser;
let projectId: string;
let path: string;

const phrase = "seven lanterns by the quay";
const dayMs = 86_400_000;
const inDays = (days: number) => new Date(Date.now() + days * dayMs).toISOString();
const someone = () => `n${randomUUID().slice(0, 8)}@new.example`;

beforeAll(async () => {
  service = await startService({ LOG_LEVEL: "debug" });
  [owner, architect, outsider] = [
    await service.signIn("owner"),
    await service.signIn("architect"),
    await service.signIn("outsider"),
  ];
});
afterAll(() => service.close());
beforeEach(async () => {
  projectId = await service.openProject();
  path = `/api/projects/${projectId}`;
});

async function invite(by: Browser, more: Partial<NewInvitation> = {}): Promise<InvitationMade> {
  const body = { email: someone(), role: "architect", partEndsAt: null, ...more };
  return InvitationMade.parse((await by.post(`${path}/invitations`, body).expect(201)).body);
}

const newPerson = { as: "new person", name: "Ilse Tarn", password: phrase } as const;
const people = async (by: Browser) => ProjectPeople.parse((await by.get(`${path}/people`).expect(200)).body);
const record = async () => z.array(RecordEntry).parse((await owner.get(`${path}/record`).expect(200)).body);

describe("an invitation", () => {
  it("goes out as a letter whose link is the one that is told, opens for a cookie, and makes a person with a part", async () => {
    const { invitation, path: link, letterSent } = await invite(owner, { email: "Ilse@Tarn.Example" });
    expect(letterSent).toBe(true);
    const letter = lettersIn(service.mailFolder).at(-1);
    expect(letter).toContain("To: ilse@tarn.example");
    expect(linkIn(letter)).toBe(link);
    const visitor = new Visitor(service);
    const opened = await visitor.open(link);
    expect(opened.body).toEqual({
      ...{ kind: "invitation", email: "ilse@tarn.example", projectName: "Lock Lane" },
      ...{ role: "architect", invitedBy: "Test owner", account: "none" },
    });
    expect(visitor.lastCookies[0]).toMatch(
      /^cornerway_link=[\w-]{43}; Max-Age=1800; Path=\/api\/link; HttpOnly; SameSite=Strict$/,
    );
    expect((await visitor.send("get", "/api/link")).body).toEqual(opened.body);
    const ilse = await new Visitor(service).enter(link, newPerson);
    expect(ilse).toMatchObject({ projectId, person: { name: "Ilse Tarn", email: "ilse@tarn.example" } });
    await ilse.get(path).expect(200);
    expect((await people(owner)).invitations.map(({ id }) => id)).not.toContain(invitation.id);
    expect((await record()).slice(-2).map(({ actor, payload }) => [actor.role, payload])).toEqual([
      ["owner", { kind: "person invited", email: "ilse@tarn.example", role: "architect" }],
      ["architect", { kind: "role given", personName: "Ilse Tarn", role: "architect", invitedBy: "Test owner" }],
    ]);
  });

  it("is kept neither in the database nor in the log: not its secret, not the ticket, not an address", async () => {
    const { path: link } = await invite(owner);
    const visitor = new Visitor(service);
    await visitor.open(link);
    const ticket = visitor.cookies.get("cornerway_link") ?? "none";
    await visitor.use({ ...newPerson, password: "short" });
    await visitor.use(newPerson);
    const secret = link.split("#")[1] ?? "none";
    const { oneTimeLink, recordPayload, session, rateWindow } = service.owner.connection;
    const kept = await Promise.all([
      oneTimeLink.findMany(),
      recordPayload.findMany(),
      session.findMany(),
      rateWindow.findMany(),
    ]);
    for (const text of [JSON.stringify(kept), service.log.join("")])
      for (const hidden of [secret, ticket, phrase]) expect(text).not.toContain(hidden);
    expect(service.log.length).toBeGreaterThan(0);
    expect(service.log.join("")).toContain('"route":"/api/link/use"');
  });

  const gone: [string, (made: InvitationMade) => Promise<unknown>][] = [
    ["used", ({ path: link }) => new Visitor(service).enter(link, newPerson)],
    ["withdrawn", ({ invitation }) => owner.delete(`${path}/invitations/${invitation.id}`).expect(204)],
    [
      "expired",
      ({ invitation: { id } }) =>
        service.owner.connection.oneTimeLink.update({ where: { id }, data: { expiresAt: new Date(Date.now() - 1) } }),
    ],
    ["one that never was", async () => undefined],
  ];
  it.each(gone)("that is %s is answered in the same words as any other that is not good", async (what, end) => {
    const made = await invite(owner);
    const early = new Visitor(service);
    await early.open(made.path);
    await end(made);
    const link = what === "one that never was" ? `/invitation#${"A".repeat(43)}` : made.path;
    const answers = [await new Visitor(service).open(link), await new Visitor(service).send("get", "/api/link")];
    if (what !== "one that never was") answers.push(await early.use(newPerson), await early.send("get", "/api/link"));
    for (const answer of answers) {
      const { requestId: _one, ...problem } = expectProblem(answer, "link-gone");
      expect(problem).toEqual({
        type: "tag:cornerway.example,2026:link-gone",
        ...{ title: "This link is used, withdrawn or expired. Ask for a new one.", status: 410, code: "link-gone" },
      });
      expect(answer.get("Set-Cookie")).toBeUndefined();
    }
  });

  it("opened twice is good in the browser that opened it last", async () => {
    const { path: link } = await invite(owner);
    const [first, second] = [new Visitor(service), new Visitor(service)];
    await first.open(link);
    await second.open(link);
    expectProblem(await first.use(newPerson), "link-gone");
    expect((await second.use(newPerson)).status).toBe(201);
  });

  it("is no longer open when the cookie's half hour is over, and can be opened again", async () => {
    const { invitation, path: link } = await invite(owner);
    const visitor = new Visitor(service);
    await visitor.open(link);
    const data = { ticketExpiresAt: new Date(Date.now() - 1) };
    await service.owner.connection.oneTimeLink.update({ where: { id: invitation.id }, data });
    expectProblem(await visitor.use(newPerson), "link-gone");
    expect((await visitor.open(link)).status).toBe(201);
  });

  it("lets a known person in by their password, and one who is signed in by a word", async () => {
    const { path: first } = await invite(owner, { email: "Outsider@People.Example", role: "checker" });
    const visitor = new Visitor(service);
    expect((await visitor.open(first)).body).toMatchObject({ account: "known" });
    expectProblem(await visitor.use({ as: "known person", password: "not this one" }), "sign-in-refused");
    expectProblem(await visitor.use(newPerson), "body-invalid");
    expectProblem(await visitor.use({ as: "signed in" }), "body-invalid");
    const joined = await visitor.enter(first, { as: "known person", password });
    await joined.get(`${path}/draft`).expect(200);

    const { path: second } = await invite(owner, { email: "outsider@people.example", role: "owner" });
    const signedIn = new Visitor(service, outsider);
    expect((await signedIn.open(second)).body).toMatchObject({ account: "signed-in" });
    await signedIn.enter(second, { as: "signed in" });
    expectProblem(await outsider.get("/api/session"), "not-signed-in"); // the session is renewed at sign-in
    outsider = await service.signIn("outsider");
  });

  it("is not for someone else who happens to be signed in", async () => {
    const { path: link } = await invite(owner);
    const visitor = new Visitor(service, architect);
    expect((await visitor.open(link)).body).toMatchObject({ account: "none" });
    expectProblem(await visitor.use({ as: "signed in" }), "body-invalid");
  });

  it("made again for the same address and role takes the place of the one before", async () => {
    const email = someone();
    const { path: first } = await invite(owner, { email });
    const { path: second } = await invite(architect, { email });
    expectProblem(await new Visitor(service).open(first), "link-gone");
    expect((await new Visitor(service).open(second)).status).toBe(201);
    expect((await people(owner)).invitations.filter((one) => one.email === email)).toHaveLength(1);
  });

  it("of a reader says when their part ends, and of nobody else", async () => {
    const refused = async (body: object) =>
      expectProblem(await owner.post(`${path}/invitations`, { email: someone(), ...body }), "body-invalid").fields;
    expect(await refused({ role: "reader", partEndsAt: null })).toMatchObject([{ pointer: "/partEndsAt" }]);
    expect(await refused({ role: "owner", partEndsAt: inDays(9) })).toMatchObject([{ pointer: "/partEndsAt" }]);
    expect(await refused({ role: "reader", partEndsAt: inDays(-1) })).toMatchObject([{ pointer: "/partEndsAt" }]);
    expect(await refused({ role: "reader", partEndsAt: inDays(400) })).toMatchObject([{ pointer: "/partEndsAt" }]);
    const partEndsAt = inDays(30);
    const { path: link } = await invite(owner, { role: "reader", partEndsAt });
    const reader = await new Visitor(service).enter(link, newPerson);
    const { members } = await people(owner);
    expect(members.find(({ id }) => id === reader.person.id)?.parts).toMatchObject([{ expiresAt: partEndsAt }]);
  });

  it.each([
    ["eleven char", "/password"],
    ["Ilse Tarn Ilse Tarn", "/password"],
    ["cornerway2026!", "/password"],
  ])("does not take the password %j, and stays good", async (weak, pointer) => {
    const { path: link } = await invite(owner);
    const visitor = new Visitor(service);
    await visitor.open(link);
    const problem = expectProblem(await visitor.use({ ...newPerson, password: weak }), "password-refused");
    expect(problem.fields?.map((field) => field.pointer)).toEqual([pointer]);
    expect((await visitor.use(newPerson)).status).toBe(201);
  });

  it("leaves nothing half-written when two invitations of one new address are used at once", async () => {
    const email = someone();
    const links = [await invite(owner, { email }), await invite(owner, { email, role: "owner" })];
    const visitors = links.map(() => new Visitor(service));
    await Promise.all(links.map((made, at) => visitors[at]?.open(made.path)));
    const answers = await Promise.all(visitors.map((visitor) => visitor.use(newPerson)));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 400]);
    expect(await service.owner.connection.person.count({ where: { email } })).toBe(1);
  });

  it("from one place is opened no more than thirty times a minute", async () => {
    await service.owner.connection.rateWindow.deleteMany();
    const unknown = () => new Visitor(service).open(`/invitation#${"A".repeat(43)}`);
    for (let n = 0; n < 30; n += 1) expectProblem(await unknown(), "link-gone");
    expectProblem(await unknown(), "too-many-tries");
    await service.owner.connection.rateWindow.deleteMany();
  });
});

describe("one person never both draws and judges", () => {
  const expectRefusal = async (by: Browser, email: string, role: string, code: ProblemCode) =>
    expectProblem(await by.post(`${path}/invitations`, { email, role, partEndsAt: null }), code);

  it.each(["architect@people.example", "Architect@People.Example", "ARCHITECT@PEOPLE.EXAMPLE"])(
    "the architect, written %s, is not asked in as engineer or checker",
    async (email) => {
      await expectRefusal(owner, email, "engineer", "roles-exclude");
      await expectRefusal(owner, email, "checker", "roles-exclude");
      await expectRefusal(owner, email, "architect", "already-in");
    },
  );

  it("an address that is asked in as architect is not asked in as engineer as well", async () => {
    const email = someone();
    await invite(owner, { email, role: "architect" });
    await expectRefusal(owner, email.toUpperCase(), "engineer", "roles-exclude");
  });

  it("an invitation that came to exclude another part is refused when it is used, and nothing is written", async () => {
    const email = someone();
    const { path: link } = await invite(owner, { email, role: "engineer" });
    await service.owner.connection.oneTimeLink.updateMany({
      where: { email },
      data: { email: "outsider@people.example" },
    });
    const personId = service.people.outsider.id;
    await service.owner.connection.membership.create({ data: { projectId, personId, role: "architect" } });
    const before = await record();
    const visitor = new Visitor(service, outsider);
    await visitor.open(link);
    expectProblem(await visitor.use({ as: "signed in" }), "roles-exclude");
    expect(await record()).toEqual(before);
    expect((await visitor.send("get", "/api/link")).status).toBe(200);
  });

  it("whoever drew as architect does not come back as engineer; whoever did nothing may", async () => {
    await architect.post(`${path}/draft/acts`, act(0, [place(1)])).expect(200);
    const { path: link } = await invite(owner);
    const idle = await new Visitor(service).enter(link, newPerson);
    for (const { person } of [architect, idle])
      await owner.post(`${path}/people/${person.id}/remove`, { role: "architect" }).expect(204);
    await expectRefusal(owner, architect.person.email, "engineer", "roles-exclude");
    await invite(owner, { email: idle.person.email, role: "engineer" });
    const data = { projectId, personId: architect.person.id, role: "engineer" };
    await expect(service.owner.connection.membership.create({ data })).rejects.toThrow("CW003");
  });
});

describe("who is asked in by whom", () => {
  it("is the owner's to say where another owner is meant, once there is one", async () => {
    const body = { email: someone(), role: "owner", partEndsAt: null };
    expectProblem(await architect.post(`${path}/invitations`, body), "role-refused");
    await invite(owner, { role: "owner" });
  });

  it("is seen by those who may ask people in, and by nobody else", async () => {
    const { invitation } = await invite(owner);
    expect((await people(architect)).invitations).toMatchObject([{ id: invitation.id }]);
    const seen = await people(await service.signIn("checker"));
    expect(seen.invitations).toEqual([]);
    expect(seen.members.map(({ email }) => email)).toEqual([null, null, null, null, null]);
    expect(JSON.stringify(seen)).not.toContain("@");
  });
});
