import { randomUUID } from "node:crypto";
import {
  Account,
  KeptProject,
  ProjectPeople,
  ProjectStarted,
  ProjectSummary,
  RecordEntry,
  type UseLink,
} from "@cornerway/schema";
import { afterAll, afterEach, beforeEach, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { makeFirstLink } from "../../src/services/first-link.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";
import { Visitor } from "../support/visitor.ts";

const first: UseLink = {
  as: "first administrator",
  name: "Runa Feld",
  email: "Runa@Feld.Example",
  password: "seven lanterns by the quay",
};

/** A service on a database without people. */
async function emptyService(): Promise<TestService> {
  const service = await startService();
  await service.owner.connection.person.deleteMany();
  return service;
}

async function linkOf(service: TestService): Promise<string> {
  const path = await makeFirstLink(service.app.database);
  if (path === null) throw new Error("no link was made");
  return path;
}

describe("on a database without people", () => {
  let service: TestService;
  beforeEach(async () => {
    service = await emptyService();
  });
  afterEach(() => service.close());

  it("one link makes the first administrator, once", async () => {
    const path = await linkOf(service);
    expect(path).toMatch(/^\/first#[\w-]{43}$/);
    const visitor = new Visitor(service);
    expect((await visitor.open(path)).body).toEqual({ kind: "first-administrator" });
    expectProblem(await visitor.use({ ...first, password: "Runa Feld Runa" }), "password-refused");
    const runa = await visitor.enter(path, first);
    expect(Account.parse((await runa.get("/api/account").expect(200)).body)).toMatchObject({
      ...{ administrator: true, person: { email: "runa@feld.example" } },
    });
    expectProblem(await new Visitor(service).open(path), "link-gone");
    expect(await makeFirstLink(service.app.database)).toBeNull();
  });

  it("processes that start together tell one link; a later start tells a new one, and the old one ends", async () => {
    const together = await Promise.all([1, 2, 3].map(() => makeFirstLink(service.app.database)));
    const told = together.filter((path) => path !== null);
    expect(told).toHaveLength(1);
    await service.owner.connection.oneTimeLink.updateMany({ data: { madeAt: new Date(Date.now() - 11_000) } });
    const later = await linkOf(service);
    expectProblem(await new Visitor(service).open(told[0] ?? ""), "link-gone");
    expect((await new Visitor(service).open(later)).status).toBe(201);
  });

  it("a link that was opened is no use once someone is there, and nobody is written down by it", async () => {
    const visitor = new Visitor(service);
    await visitor.open(await linkOf(service));
    const other = { id: randomUUID(), name: "Ivo Maat", email: "ivo@feld.example", passwordHash: "none" };
    await service.owner.connection.person.create({ data: other });
    expectProblem(await visitor.use(first), "link-gone");
    expect(await service.owner.connection.person.findMany({ select: { name: true, administrator: true } })).toEqual([
      { name: "Ivo Maat", administrator: false },
    ]);
  });
});

it("where there are people no link is made", async () => {
  const service = await startService();
  expect(await makeFirstLink(service.app.database)).toBeNull();
  await service.close();
});

describe("an administrator of the service", () => {
  let service: TestService;
  let runa: Browser;
  beforeAll(async () => {
    service = await emptyService();
    runa = await new Visitor(service).enter(await linkOf(service), first);
  });
  afterAll(() => service.close());

  const start = async (ownPart: string | null) => {
    const body = { name: "Tow Path", place: "Tow Path 9, Fenquill", client: "Fenquill Boats", ownPart };
    return ProjectStarted.parse((await runa.post("/api/projects", body).expect(201)).body).id;
  };
  const record = async (by: Browser, id: string) =>
    z.array(RecordEntry).parse((await by.get(`/api/projects/${id}/record`).expect(200)).body);

  it("starts a project with a part of their own in it", async () => {
    const id = await start("architect");
    expect((await record(runa, id)).map(({ actor, kind }) => [actor.role, kind])).toEqual([
      ["architect", "project opened"],
      ["architect", "role given"],
    ]);
    await runa.get(`/api/projects/${id}/draft`).expect(200);
  });

  it("starts one without, sees to its people, and never sees what is drawn", async () => {
    const id = await start(null);
    const kept = z.array(KeptProject).parse((await runa.get("/api/administration/projects").expect(200)).body);
    expect(kept.map((project) => project.id)).toContain(id);
    for (const rest of ["", "/draft", "/record", "/thread", "/revisions"])
      expectProblem(await runa.get(`/api/projects/${id}${rest}`), "not-found");
    const people = ProjectPeople.parse((await runa.get(`/api/projects/${id}/people`).expect(200)).body);
    expect(people).toMatchObject({
      ...{ members: [], acts: ["read-people", "invite", "remove-person", "set-expiry"] },
    });
    const body = { email: "olm@feld.example", role: "owner", partEndsAt: null };
    const made = await runa.post(`/api/projects/${id}/invitations`, body).expect(201);
    const olm = await new Visitor(service).enter(String(made.body.path), {
      as: "new person",
      name: "Olm Feld",
      password: "brass keys on a nail",
    });
    expect((await record(olm, id)).map(({ actor, kind }) => [actor.role, kind])).toEqual([
      ["administrator", "project opened"],
      ["administrator", "person invited"],
      ["owner", "role given"],
    ]);
  });

  it("is the only one who does that: others are refused, and learn of no project", async () => {
    const id = await start(null);
    const made = await runa
      .post(`/api/projects/${id}/invitations`, { email: "ivo@feld.example", role: "architect", partEndsAt: null })
      .expect(201);
    const ivo = await new Visitor(service).enter(String(made.body.path), {
      as: "new person",
      name: "Ivo Maat",
      password: "two herons on the weir",
    });
    expectProblem(await ivo.post("/api/projects", {}), "administrator-only");
    expectProblem(await ivo.get("/api/administration/projects"), "administrator-only");
    const seen = z.array(ProjectSummary).parse((await ivo.get("/api/projects").expect(200)).body);
    expect(seen.map((project) => project.id)).toEqual([id]);
  });
});
