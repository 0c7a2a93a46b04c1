import { randomUUID } from "node:crypto";
import { ConditionNow, Stamp, StampNow, type Assessment, type NewStamp, type Revision } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { boundTo, openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { move, place } from "../support/sample.ts";
import { password, type TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];
let room: ReviewRoom;
let revision: Revision;

/** An answer in which strength is judged under all loads and nothing stands in the way. */
const works = (answer: Assessment): Assessment => ({
  ...answer,
  ...{ verdict: "works as built", scope: "load path, and strength under all loads" },
  marks: answer.marks.map((mark) => ({ ...mark, verdict: "works as built" })),
});

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  room = await openReviewRoom(service, everyone);
  revision = await room.send([place(1), place(2)], works);
});

const newStamp = (more: Partial<NewStamp> = {}): NewStamp => ({
  ...{ id: randomUUID(), ...boundTo(revision), disposition: "No exceptions taken", text: "Read as drawn." },
  ...more,
});
const press = (stamp: NewStamp, given = password) =>
  everyone.engineer.post(`${room.path}/stamps`, { stamp, password: given });
const stamps = async () => z.array(StampNow).parse((await everyone.reader.get(`${room.path}/stamps`).expect(200)).body);
const conditions = async () =>
  z.array(ConditionNow).parse((await everyone.engineer.get(`${room.path}/conditions`).expect(200)).body);
const correction = () => ({ id: randomUUID(), text: "Pack the seat to 12 mm.", owedBy: "architect" as const });

describe("a stamp", () => {
  it("is pressed only with the engineer's own password, which is kept nowhere", async () => {
    const refused = expectProblem(await press(newStamp(), "another phrase"), "present-password-wrong");
    expect(refused.fields?.[0]?.pointer).toBe("/password");
    expect(await stamps()).toEqual([]);
    await press(newStamp()).expect(201);
    const { rows } = { rows: await service.owner.connection.stamp.findMany({ where: { projectId: room.projectId } }) };
    expect(JSON.stringify(rows)).not.toContain(password);
    expect(service.log.join("\n")).not.toContain(password);
  });

  it("is on one item or on the whole, each once, and nothing is stamped after the whole", async () => {
    await press(newStamp({ elementId: "g1", disposition: "Revise and resubmit" })).expect(201);
    expectProblem(await press(newStamp({ elementId: "g1" })), "already-answered");
    expectProblem(await press(newStamp({ elementId: "g9" })), "element-unknown");
    await press(newStamp({ elementId: "g2" })).expect(201);
    await press(newStamp({ disposition: "Rejected" })).expect(201);
    expectProblem(await press(newStamp()), "already-answered");
    expectProblem(await press(newStamp({ elementId: "g2" })), "already-answered");
    expect((await stamps()).map(({ stamp: { elementId, disposition } }) => [elementId, disposition])).toEqual([
      ["g1", "Revise and resubmit"],
      ["g2", "No exceptions taken"],
      [undefined, "Rejected"],
    ]);
    expect((await room.read("A")).stamp?.disposition).toBe("Rejected");
  });

  it("on the whole is never lighter than one on an item of it", async () => {
    await press(newStamp({ elementId: "g1", disposition: "Revise and resubmit" })).expect(201);
    expect(expectProblem(await press(newStamp()), "stamp-not-open").detail).toContain("Revise and resubmit");
    await press(newStamp({ disposition: "Revise and resubmit" })).expect(201);
  });

  it("on an item looks at the marks of that item alone", async () => {
    const spoiled = (answer: Assessment): Assessment => {
      const { marks, ...rest } = works(answer);
      const verdictOf = (elements: string[]) => (elements.includes("g1") ? "does not work" : "works as built");
      return { ...rest, marks: marks.map((mark) => ({ ...mark, verdict: verdictOf(mark.elements) })) };
    };
    revision = await room.send([move(1, 1_000_000)], spoiled);
    expect(expectProblem(await press(newStamp({ elementId: "g1" })), "stamp-not-open").detail).toMatch(/does not work/);
    await press(newStamp({ elementId: "g2" })).expect(201);
  });

  it("with corrections names each of them, and each stays open until the engineer closes it", async () => {
    const noted = { disposition: "Make corrections noted" } as const;
    expect(expectProblem(await press(newStamp(noted)), "body-invalid").fields?.[0]?.pointer).toBe("/conditions");
    const free = newStamp({ conditions: [correction()] });
    expect(expectProblem(await press(free), "body-invalid").fields?.[0]?.pointer).toBe("/conditions");
    const stamp = newStamp({ ...noted, conditions: [correction(), correction()] });
    const pressed = Stamp.parse((await press(stamp).expect(201)).body);
    expect(pressed.conditions).toEqual(stamp.conditions);
    expect(await conditions()).toMatchObject([
      { number: 1, state: "open", source: "stamp", sourceId: stamp.id, waitsFor: "architect" },
      { number: 2, state: "open" },
    ]);
    revision = await room.send([move(1, 1_000_000)], works);
    expect(expectProblem(await press(newStamp()), "stamp-not-open").detail).toBe("2 conditions are open.");
  });

  it("bears the words of the engineer's office and keeps the meaning", async () => {
    const stampWording = { "Revise and resubmit": "Amend and send again" };
    await everyone.engineer.post("/api/account/stamp-wording", { stampWording }).expect(204);
    expect((await everyone.engineer.get("/api/account").expect(200)).body.stampWording).toEqual(stampWording);
    const { body } = await press(newStamp({ disposition: "Revise and resubmit" })).expect(201);
    expect(body).toMatchObject({ disposition: "Revise and resubmit", wording: "Amend and send again" });
    await everyone.engineer.post("/api/account/stamp-wording", { stampWording: {} }).expect(204);
    expect((await stamps())[0]?.stamp.wording).toBe("Amend and send again");
    const fifth = { stampWording: { Approved: "Approved" } };
    expectProblem(await everyone.engineer.post("/api/account/stamp-wording", fifth), "body-invalid");
  });

  it("is not pressed while a newer revision is there, nor while that is not assessed", async () => {
    const earlier = newStamp();
    await room.draw([move(1, 1_000_000)]);
    const letter = await room.sendDraft();
    expectProblem(await press(earlier), "revision-superseded");
    const { contentDigest } = await room.read(letter);
    expectProblem(await press(newStamp({ revision: letter, contentDigest })), "assessment-pending");
  });

  it("stands while what it was pressed on is what is there, and says afterwards what is not", async () => {
    await press(newStamp({ elementId: "g1" })).expect(201);
    await press(newStamp({ elementId: "g2" })).expect(201);
    await press(newStamp()).expect(201);
    expect((await stamps()).map(({ standing }) => standing.state)).toEqual(["stands", "stands", "stands"]);
    await room.send([move(1, 1_000_000)], works);
    const later = await stamps();
    expect(later.map(({ standing }) => standing.state)).toEqual(["stale", "stands", "stale"]);
    expect(later.map(({ standing }) => standing.changed.elements)).toEqual([["g1"], [], ["g1"]]);
  });
});
