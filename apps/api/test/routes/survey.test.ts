import { createHash, randomUUID } from "node:crypto";
import {
  Draft,
  SealState,
  Owed,
  SurveyNow,
  SurveyedContainerNow,
  type Damage,
  type MeasuredThickness,
  type NewInspection,
} from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { keepPhoto } from "../support/keep-photo.ts";
import { boundTo, openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { move, place } from "../support/sample.ts";
import type { Browser, TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];
let room: ReviewRoom;
let photo: { fileId: string; digest: string };

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  room = await openReviewRoom(service, everyone);
  await room.draw([place(1), place(2)]);
  photo = await keepPhoto(room);
});

// CSQU 305438 3 is the example of ISO 6346 annex A; the other's digit is worked by hand: C 13 S 30 Q 28 U 32 and 1 0 0 0 0 0
// times 1, 2, 4 … give 13 + 60 + 112 + 256 + 16 = 457 = 41·11 + 6.
const [oneNumber, otherNumber] = ["CSQU 305438 3", "CSQU 100000 6"];
const plate = {
  approvalNumber: "GB-LR 3245",
  madeIn: "2019-04",
  tareKg: 2300,
  maxGrossKg: 30_480,
  stackingKg: 216_000,
  rackingN: 150_000,
};

const inspection = (more: { damages?: Damage[]; thicknesses?: MeasuredThickness[] } = {}): NewInspection => ({
  ...{ step: "inspected", id: randomUUID(), day: "2026-11-12", plate, damages: [], thicknesses: [] },
  ...{ measuredWith: null, floor: "untreated", photos: [photo], text: null },
  ...more,
});
const offer = (by: Browser = everyone.owner, more: object = {}) =>
  by.post(`${room.path}/survey`, { id: randomUUID(), containerNumber: oneNumber, type: "1CC", ...more });
const step = (by: Browser, id: string, what: "inspections" | "judgements" | "positions", body: object) =>
  by.post(`${room.path}/survey/${id}/${what}`, { id: randomUUID(), ...body });
const inspect = (id: string, more?: Parameters<typeof inspection>[0], by: Browser = everyone.owner) =>
  step(by, id, "inspections", inspection(more));
const judge = (id: string, outcome: string, by: Browser = everyone.engineer) =>
  step(by, id, "judgements", { step: "judged", outcome, text: "Looked at." });
const assign = (id: string, elementId = "g1", by: Browser = everyone.architect) =>
  step(by, id, "positions", { step: "assigned", elementId });
const survey = async (by: Browser = everyone.engineer) =>
  SurveyNow.parse((await by.get(`${room.path}/survey`).expect(200)).body);
const draft = async () => Draft.parse((await everyone.architect.get(`${room.path}/draft`).expect(200)).body);
const offered = async (more?: object) => {
  const made = SurveyedContainerNow.parse((await offer(everyone.owner, more).expect(201)).body);
  return made.container.id;
};
async function accepted(more?: Parameters<typeof inspection>[0]): Promise<string> {
  const id = await offered();
  await inspect(id, more).expect(200);
  await judge(id, "accepted").expect(200);
  return id;
}

describe("a container that is offered", () => {
  it("is known by its number with the check digit, once in a project", async () => {
    const problem = expectProblem(await offer(everyone.owner, { containerNumber: "CSQU 305438 4" }), "body-invalid");
    expect(problem.fields?.[0]).toMatchObject({ pointer: "/containerNumber" });
    const id = randomUUID();
    const made = (await offer(everyone.owner, { id }).expect(201)).body;
    expect((await offer(everyone.owner, { id }).expect(201)).body).toEqual(made);
    expectProblem(await offer(), "body-invalid");
    expect((await survey(everyone.reader)).containers).toMatchObject([
      { container: { containerNumber: "CSQU3054383", number: 1 }, state: "offered", position: null },
    ]);
  });

  it("is inspected with photos that are kept here under the digest that was seen", async () => {
    const id = await offered();
    expectProblem(await step(everyone.owner, id, "inspections", { ...inspection(), photos: [] }), "body-invalid");
    const wrong = { ...photo, digest: createHash("sha256").update("x").digest("hex") };
    expectProblem(
      await step(everyone.owner, id, "inspections", { ...inspection(), photos: [wrong] }),
      "digest-mismatch",
    );
    const none = { ...photo, fileId: randomUUID() };
    expectProblem(await step(everyone.owner, id, "inspections", { ...inspection(), photos: [none] }), "body-invalid");
    expect((await everyone.reader.get(`${room.path}/files/${photo.fileId}`)).status).toBe(404);
    await inspect(id).expect(200);
    await everyone.reader.get(`${room.path}/files/${photo.fileId}`).expect(200);
  });

  it("is judged by the engineer alone, and not before anyone has inspected it", async () => {
    const id = await offered();
    expectProblem(await judge(id, "accepted"), "step-refused");
    await inspect(id).expect(200);
    for (const by of [everyone.owner, everyone.architect, everyone.checker])
      expectProblem(await judge(id, "accepted", by), "role-refused");
    await judge(id, "accepted").expect(200);
    expectProblem(await judge(id, "accepted"), "step-refused");
  });

  it("is not accepted with damage or thickness beyond its limit, and that is said with the numbers", async () => {
    const bent = { member: "top side rail", place: "left, 3 m", kind: "bent", sizeUm: 61_000 } as const;
    const id = await offered();
    await inspect(id, { damages: [bent], thicknesses: [{ member: "bottom side rail", thicknessUm: 3900 }] }).expect(
      200,
    );
    const problem = expectProblem(await judge(id, "accepted"), "container-unfit");
    expect(problem.fields?.[0]?.pointer).toBe("/outcome");
    expect(JSON.stringify(problem)).toMatch(
      /top side rail, left, 3 m: bent 61 mm, limit 60 mm; bottom side rail: 3\.9 mm thick, at least 4\.05 mm/,
    );
    await judge(id, "repair").expect(200);
    await inspect(id).expect(200);
    await judge(id, "accepted").expect(200);
  });

  it("is held against the limits that the engineer sets for the project", async () => {
    const id = await offered();
    await inspect(id, { damages: [{ member: "cross member", place: "3rd", kind: "bent", sizeUm: 20_000 }] }).expect(
      200,
    );
    expect((await survey()).containers[0]?.findings).toMatchObject([{ limitUm: null, beyond: null }]);
    const { limits } = await survey();
    const own = {
      member: "cross member",
      kind: "bent",
      limitUm: 15_000,
      source: "Practice of the office",
      certainty: "common practice",
    };
    const body = { id: randomUUID(), limits: { ...limits, damage: [...limits.damage, own] } };
    expectProblem(await everyone.owner.post(`${room.path}/survey/limits`, body), "role-refused");
    await everyone.engineer.post(`${room.path}/survey/limits`, body).expect(201);
    expect(await survey()).toMatchObject({
      setBy: { author: { role: "engineer" } },
      containers: [{ findings: [{ beyond: true }] }],
    });
    expectProblem(await judge(id, "accepted"), "container-unfit");
  });
});

describe("a container in its place", () => {
  it("is accepted and of the drawn type; anything else is refused with where and what to do", async () => {
    const id = await offered();
    const refused = async (elementId?: string) =>
      JSON.stringify(expectProblem(await assign(id, elementId), "container-unfit").fields);
    expect(await refused()).toMatch(/elementId.*CSQU 305438 3 is not inspected yet, and G1 takes only/);
    await inspect(id).expect(200);
    await judge(id, "rejected").expect(200);
    expect(await refused()).toMatch(/CSQU 305438 3 is rejected, and G1 takes only .*place another there/);
    const long = await offered({ containerNumber: otherNumber, type: "1AAA" });
    await inspect(long).expect(200);
    await judge(long, "accepted").expect(200);
    const other = expectProblem(await assign(long), "container-unfit");
    expect(JSON.stringify(other.fields)).toMatch(
      /G1 is drawn as 1CC, and CSQU 100000 6 is 1AAA: place one of the drawn type/,
    );
    expectProblem(await assign(long, "nothing"), "body-invalid");
    expectProblem(await assign(long, "g1", everyone.engineer), "role-refused");
    expect((await draft()).scheme.containers.every(({ plateTareKg }) => plateTareKg === undefined)).toBe(true);
  });

  it("is in one place, and no place has two", async () => {
    const id = await accepted();
    await assign(id).expect(200);
    expectProblem(await assign(id, "g2"), "step-refused");
    const second = await offered({ containerNumber: otherNumber });
    await inspect(second).expect(200);
    await judge(second, "accepted").expect(200);
    expect(JSON.stringify(expectProblem(await assign(second), "container-unfit").fields)).toMatch(
      /assigned to G1: release it first/,
    );
    await step(everyone.architect, id, "positions", { step: "released", text: "Swapped." }).expect(200);
    await assign(second).expect(200);
  });

  it("brings what was measured of it onto the drawing with its source, and takes it off when it is released", async () => {
    const id = await accepted({ thicknesses: [{ member: "top side rail", thicknessUm: 2800 }] });
    await assign(id).expect(200);
    const { scheme } = await draft();
    expect(scheme.overrides).toMatchObject([
      {
        elementId: "g1",
        member: "top side rail",
        thicknessUm: 2800,
        source: expect.stringMatching(/^Survey of CSQU3054383 of 2026-11-12, by /),
      },
    ]);
    expect(scheme.containers[0]).toMatchObject({ plateTareKg: 2300 });
    await step(everyone.architect, id, "positions", { step: "released", text: "Swapped." }).expect(200);
    const after = (await draft()).scheme;
    expect([after.overrides, after.containers[0]?.plateTareKg]).toEqual([[], undefined]);
  });
});

describe("results of a revision", () => {
  const seal = async () => SealState.parse((await everyone.engineer.get(`${room.path}/seal`).expect(200)).body);
  const owed = async () =>
    z
      .array(Owed)
      .parse((await everyone.engineer.get("/api/owed").expect(200)).body)
      .filter((each) => each.projectId === room.projectId);
  it("go stale when what stands there was measured otherwise, say of what, and stand again once it is drawn and judged", async () => {
    const revision = await room.send([move(2, 9_000_000)]);
    const check = { id: randomUUID(), ...boundTo(revision), outcome: "agrees", text: "By hand.", points: [] };
    await everyone.checker.post(`${room.path}/checks`, check).expect(201);
    expect((await seal()).checks[0]?.standing.state).toBe("stands");

    const id = await accepted({ thicknesses: [{ member: "bottom side rail", thicknessUm: 4200 }] });
    await assign(id).expect(200);
    expect((await survey()).containers[0]?.departures).toEqual([
      { what: "thickness", elementId: "g1", member: "bottom side rail", drawnUm: null, measuredUm: 4200 },
      { what: "tare", elementId: "g1", drawnKg: null, plateKg: 2300 },
    ]);
    const stale = await seal();
    expect(stale.checks[0]?.standing).toMatchObject({ state: "stale", changed: { found: ["g1"] } });
    expect(stale.hindrances).toContainEqual({ why: "found otherwise", elementId: "g1" });
    expect(await owed()).toContainEqual(
      expect.objectContaining({ what: "survey to draw", owedBy: "architect", owedTo: "engineer", number: 1 }),
    );

    const drawn = await room.send([move(2, 10_000_000)]);
    expect(drawn.scheme.overrides).toHaveLength(1);
    expect((await survey()).containers[0]?.departures).toEqual([]);
    expect((await seal()).hindrances.map(({ why }) => why)).not.toContain("found otherwise");
    expect((await owed()).map(({ what }) => what)).not.toContain("survey to draw");
  });

  it("go stale when the container that stands there is rejected after all", async () => {
    const id = await accepted();
    await assign(id).expect(200);
    await room.send([move(2, 9_000_000)]);
    expect((await survey()).containers[0]?.departures).toEqual([]);
    await judge(id, "rejected").expect(200);
    expect((await survey()).containers[0]?.departures).toEqual([
      { what: "not accepted", elementId: "g1", state: "rejected" },
    ]);
    expect((await seal()).hindrances).toContainEqual({ why: "found otherwise", elementId: "g1" });
  });
});
