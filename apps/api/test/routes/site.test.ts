import { randomUUID } from "node:crypto";
import { Owed, SealState, SiteNow, SiteWord, type Assessment, type Post, type Revision } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { gatherSource } from "../../src/services/permit-sets/gather-source.ts";
import { lastNumber } from "../../src/store/record-rows.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { keepPhoto } from "../support/keep-photo.ts";
import { boundTo, openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { place } from "../support/sample.ts";
import { password, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];
let room: ReviewRoom;
let photos: { fileId: string; digest: string }[];

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  room = await openReviewRoom(service, everyone);
  photos = [await keepPhoto(room)];
});

const post: Post = {
  ...{
    id: "p1",
    tag: "P1",
    xUm: 0,
    yUm: 3_000_000,
    baseZUm: 0,
    topZUm: 2_500_000,
    turnMdeg: 0,
    section: "HSS102X102X6.4",
  },
};
/** All works, published, under all loads: nothing stands in the way of the seal. */
const works = (answer: Assessment): Assessment => ({
  ...answer,
  scope: "load path, and strength under all loads",
  marks: answer.marks.map((mark) => ({ ...mark, verdict: "works as built", certainty: "published" })),
});
const issue = (revision: Revision) =>
  everyone.engineer
    .post(`${room.path}/seal-issues`, { issue: { id: randomUUID(), ...boundTo(revision) }, password })
    .expect(201);
async function issued(operations = [place(1), { kind: "post.set" as const, post }]): Promise<Revision> {
  const revision = await room.send(operations, works);
  await issue(revision);
  return revision;
}
const site = async (by: Browser = everyone.owner) =>
  SiteNow.parse((await by.get(`${room.path}/site`).expect(200)).body);
const say = (says: string, key = "post:p1", { by = everyone.owner, revision = "A" } = {}) =>
  by.post(`${room.path}/site/words`, { says, id: randomUUID(), revision, key, photos, text: "As seen." });
const judge = (says: string, key = "post:p1", by: Browser = everyone.engineer) =>
  by.post(`${room.path}/site/judgements`, { says, id: randomUUID(), revision: "A", key, text: "Looked at." });
const stamp = async (elementId?: string) => {
  const bound = boundTo(await room.read("A"));
  const pressed = { id: randomUUID(), ...bound, disposition: "No exceptions taken", text: "Read." };
  return everyone.engineer.post(`${room.path}/stamps`, {
    ...{ stamp: elementId === undefined ? pressed : { ...pressed, elementId }, password },
  });
};
/** What every page of the set of a revision would say of itself, printed up to the last entry. */
async function printed(letter: string) {
  const db = service.owner.connection;
  const upTo = (await lastNumber(db, room.projectId)) ?? 0;
  const source = await gatherSource(db, { projectId: room.projectId, letter, units: "SI", upTo }, undefined);
  return source?.status;
}
const stateOf = async (key = "post:p1") => (await site()).items.find(({ item }) => item.key === key)?.state;
const seal = async () => SealState.parse((await everyone.engineer.get(`${room.path}/seal`).expect(200)).body);
const owed = async () => {
  const all = z.array(Owed).parse((await everyone.engineer.get("/api/owed").expect(200)).body);
  return all.filter(({ projectId }) => projectId === room.projectId).map(({ what, owedBy }) => `${owedBy}: ${what}`);
};

describe("a site", () => {
  it("has nothing to build from until a revision is issued for seal or stamped", async () => {
    await room.send([place(1)], works);
    expect(await site()).toEqual({ revision: null, by: null, built: "nothing to build from", items: [] });
    expectProblem(await say("built"), "body-invalid");
  });

  it("is built from the newest revision that is issued: its posts, welds and points to hold at, each open", async () => {
    await issued();
    await room.send([{ kind: "post.move", id: "p1", xUm: 100_000, yUm: 3_000_000 }], works);
    const { revision, by, built, items } = await site(everyone.reader);
    expect({ revision, by, built }).toEqual({ revision: "A", by: "issued for seal", built: "being built" });
    const keys = items.map(({ item }) => item.key);
    expect(keys).toEqual(expect.arrayContaining(["post:p1", "weld:p1", "container surveyed:g1"]));
    expect(items.every(({ state }) => state === "open")).toBe(true);
    expectProblem(await say("built", "post:p1", { revision: "B" }), "revision-superseded");
    expectProblem(await say("built", "post:p9"), "body-invalid");
  });

  it("is built as drawn once every item is closed by a named person with a photo", async () => {
    await issued();
    for (const { item } of (await site()).items) {
      const by = item.kind === "weld" || item.kind === "hold point" ? everyone.engineer : everyone.owner;
      const word = SiteWord.parse((await say("built", item.key, { by }).expect(201)).body);
      expect(word).toMatchObject({ author: { id: by.person.id }, photos });
    }
    expect((await site()).built).toBe("as drawn");
    await everyone.reader.get(`${room.path}/files/${photos[0]?.fileId}`).expect(200);
  });
});

describe("an item", () => {
  beforeEach(() => issued());

  it("is closed once, with a photo, by a role that may; welds and points to hold at by the engineer", async () => {
    photos = [];
    expectProblem(await say("built"), "body-invalid");
    photos = [await keepPhoto(room)];
    for (const by of [everyone.checker, everyone.reader])
      expectProblem(await say("built", "post:p1", { by }), "role-refused");
    expectProblem(await say("built", "weld:p1"), "closer-refused");
    await say("built", "weld:p1", { by: everyone.engineer }).expect(201);
    await say("built").expect(201);
    expectProblem(await say("built"), "step-refused");
    expectProblem(await judge("reopened", "post:p1", everyone.owner), "role-refused");
    await judge("reopened").expect(201);
    expect(await stateOf()).toBe("open");
  });

  it("sent twice is one word; another under its id is refused", async () => {
    const body = { says: "built", id: randomUUID(), revision: "A", key: "post:p1", photos, text: null };
    const first = (await everyone.owner.post(`${room.path}/site/words`, body).expect(201)).body;
    expect((await everyone.owner.post(`${room.path}/site/words`, body).expect(201)).body).toEqual(first);
    expectProblem(await everyone.owner.post(`${room.path}/site/words`, { ...body, key: "weld:p1" }), "id-reused");
  });

  it("that is missing marks the revision as not built as drawn, makes results stale, and is owed by the owner", async () => {
    expect((await seal()).issues[0]?.standing.state).toBe("stands");
    await say("missing").expect(201);
    expect((await site()).built).toBe("not built as drawn");
    expect((await seal()).issues[0]?.standing).toMatchObject({ state: "stale", changed: { found: ["p1"] } });
    expect(await printed("A")).toEqual({ kind: "found otherwise", tags: ["P1"] });
    expect((await seal()).hindrances).toContainEqual({ why: "found otherwise", elementId: "p1" });
    expect(await owed()).toContain("owner: site item to build");
    await say("built").expect(201);
    expect((await seal()).issues[0]?.standing.state).toBe("stands");
    expect(await printed("A")).toMatchObject({ kind: "issued", by: everyone.engineer.person.name });
    expect(await owed()).not.toContain("owner: site item to build");
    await room.send([{ kind: "post.move", id: "p1", xUm: 100_000, yUm: 3_000_000 }], works);
    expect((await seal()).issues[0]?.standing.state).toBe("stale");
    expect(await printed("A")).toEqual({ kind: "superseded", byRevision: "B" });
    expect(await printed("B")).toEqual({ kind: "preliminary" });
  });

  it("that differs makes results stale until the engineer accepts it, who is not the one that stated it", async () => {
    await say("differs", "post:p1", { by: everyone.engineer }).expect(201);
    expect((await seal()).issues[0]?.standing.state).toBe("stale");
    expectProblem(await judge("accepted"), "closer-refused");
    await judge("to mend").expect(201);
    await say("differs").expect(201);
    expect(await owed()).toContain("engineer: difference to judge");
    const [whole, item] = [await stamp(), await stamp("p1")];
    for (const refused of [whole, item])
      expect(expectProblem(refused, "stamp-not-open").detail).toContain("found 1 element otherwise");
    expect((await stamp("g1")).status).toBe(201);
    await judge("accepted").expect(201);
    expect(await stateOf()).toBe("accepted");
    expect((await site()).built).toBe("not built as drawn");
    expect((await seal()).issues[0]?.standing.state).toBe("stands");
  });

  it("that differs is open again once a revision draws it as it stands, and that revision's results are not stale", async () => {
    await say("differs").expect(201);
    await say("built", "weld:p1", { by: everyone.engineer }).expect(201);
    const { turnMdeg: _, ...rest } = post;
    const next = await room.send([{ kind: "post.change", post: { ...rest, turnMdeg: 90_000 } }], works);
    expect((await seal()).hindrances.map(({ why }) => why)).not.toContain("found otherwise");
    await issue(next);
    const items = new Map((await site()).items.map((each) => [each.item.key, each]));
    expect((await site()).revision).toBe("B");
    expect(items.get("post:p1")).toMatchObject({ state: "open", drawnOtherwise: true });
    expect(items.get("weld:p1")).toMatchObject({ state: "open", drawnOtherwise: true });
    expect(items.get("container surveyed:g1")).toMatchObject({ state: "open", drawnOtherwise: false });
  });
});
