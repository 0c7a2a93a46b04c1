import { randomUUID } from "node:crypto";
import {
  ConditionNow,
  Owed,
  QuestionNow,
  RecordEntry,
  type Answer,
  type NewQuestion,
  type NewQuestionStep,
  type Revision,
} from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { boundTo, openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { move, place } from "../support/sample.ts";
import type { Browser, TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];
let room: ReviewRoom;
let revision: Revision;

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  room = await openReviewRoom(service, everyone);
  revision = await room.send([place(1), place(2)]);
});

const newQuestion = (more: Partial<NewQuestion> = {}): NewQuestion => ({
  ...{ id: randomUUID(), elementId: "g1", view: "south elevation", revision: "A" },
  ...{ wanted: "May G1 move 2 m north?", mayGive: "1 m would do.", neededBy: "2026-12-20" },
  ...more,
});
const ask = async (by: Browser = everyone.architect, more: Partial<NewQuestion> = {}) =>
  QuestionNow.parse((await by.post(`${room.path}/questions`, newQuestion(more)).expect(201)).body);
const answer = (id: string, given: Answer, bound = boundTo(revision), by = everyone.engineer) =>
  by.post(`${room.path}/questions/${id}/answer`, { id: randomUUID(), ...bound, answer: given });
const asDrawn: Answer = { kind: "as drawn", text: null };
const follow = (by: Browser, id: string, step: "closed" | "information given" | "reopened", stepId = randomUUID()) => {
  const body: NewQuestionStep = step === "closed" ? { step, id: stepId } : { step, id: stepId, text: "Words." };
  return by.post(`${room.path}/questions/${id}/steps`, body);
};
const questions = async (by: Browser = everyone.architect) =>
  z.array(QuestionNow).parse((await by.get(`${room.path}/questions`).expect(200)).body);
const conditions = async () =>
  z.array(ConditionNow).parse((await everyone.engineer.get(`${room.path}/conditions`).expect(200)).body);

describe("a question", () => {
  it("is asked once with what is wanted, what may give and by when, and the engineer owes the answer", async () => {
    const body = newQuestion();
    const first = await everyone.architect.post(`${room.path}/questions`, body).expect(201);
    expect(first.body).toMatchObject({ ...body, number: 1, state: "asked", owedBy: "engineer", standing: null });
    expect((await everyone.architect.post(`${room.path}/questions`, body).expect(201)).body).toEqual(first.body);
    expectProblem(await everyone.owner.post(`${room.path}/questions`, body), "id-reused");
    expect(await questions()).toHaveLength(1);
  });

  it("names the field when element or revision is not there", async () => {
    const asked = (more: Partial<NewQuestion>) => everyone.owner.post(`${room.path}/questions`, newQuestion(more));
    expect(expectProblem(await asked({ elementId: "g9" }), "element-unknown").fields?.[0]?.pointer).toBe("/elementId");
    expect(expectProblem(await asked({ revision: "Z" }), "body-invalid").fields?.[0]?.pointer).toBe("/revision");
    expect(expectProblem(await asked({ neededBy: "soon" }), "body-invalid").fields?.[0]?.pointer).toBe("/neededBy");
  });

  it("is answered for the newest revision with its own digests, by the engineer alone", async () => {
    const { id } = await ask();
    for (const who of ["architect", "checker", "owner", "reader"] as const)
      expectProblem(await answer(id, asDrawn, boundTo(revision), everyone[who]), "role-refused");
    const wrong = { ...boundTo(revision), resultDigest: "0".repeat(64) };
    expectProblem(await answer(id, asDrawn, wrong), "digest-mismatch");
    expect((await answer(id, asDrawn).expect(200)).body).toMatchObject({
      ...{ state: "answered", owedBy: "architect", standing: { state: "stands", revision: "A", newest: "A" } },
    });
  });

  it("is not answered for a revision that a newer one has overtaken, nor before that is assessed", async () => {
    const { id } = await ask();
    const newer = await room.send([move(1, 2_000_000)]);
    expectProblem(await answer(id, asDrawn), "revision-superseded");
    await answer(id, asDrawn, boundTo(newer)).expect(200);
  });

  it("is closed by the role that asked, and opened again by it", async () => {
    const { id } = await ask();
    expectProblem(await follow(everyone.architect, id, "closed"), "step-refused");
    await answer(id, asDrawn).expect(200);
    expectProblem(await follow(everyone.engineer, id, "closed"), "role-refused");
    expectProblem(await follow(everyone.owner, id, "closed"), "closer-refused");
    const stepId = randomUUID();
    const closed = await follow(everyone.architect, id, "closed", stepId).expect(200);
    expect(closed.body).toMatchObject({ state: "closed", owedBy: null });
    expect((await follow(everyone.architect, id, "closed", stepId).expect(200)).body).toEqual(closed.body);
    expectProblem(await answer(id, asDrawn), "step-refused");
    expect((await follow(everyone.architect, id, "reopened").expect(200)).body).toMatchObject({ state: "asked" });
  });

  it("that needs information waits for the side that asked, and then for the engineer again", async () => {
    const { id } = await ask(everyone.owner);
    const needs = await answer(id, { kind: "need information", text: "What stands in it?" }).expect(200);
    expect(needs.body).toMatchObject({ state: "needs information", owedBy: "owner" });
    expectProblem(await follow(everyone.owner, id, "closed"), "step-refused");
    const told = await follow(everyone.owner, id, "information given").expect(200);
    expect(told.body).toMatchObject({ state: "asked", owedBy: "engineer" });
  });

  it("has an answer that goes stale when what it covers changes, and says what changed", async () => {
    const { id } = await ask();
    await answer(id, asDrawn).expect(200);
    await follow(everyone.architect, id, "closed").expect(200);
    await room.send([move(1, 2_000_000)]);
    const [stale] = await questions();
    expect(stale).toMatchObject({ state: "stale", owedBy: "engineer" });
    expect(stale?.standing).toMatchObject({ state: "stale", revision: "A", newest: "B" });
    expect(stale?.standing?.changed.elements).toEqual(["g1"]);
    expect(stale?.standing?.changed.results).toContain("bearings");
    expectProblem(await follow(everyone.architect, id, "closed"), "step-refused");
  });

  it("keeps an answer that stands when something that has nothing to do with it changes", async () => {
    const { id } = await ask();
    await answer(id, asDrawn).expect(200);
    await room.send([move(2, 30_000_000)]);
    expect((await questions())[0]).toMatchObject({ state: "answered", standing: { state: "stands", newest: "B" } });
  });

  it("stands in the record with each of its steps, and readers see none of it", async () => {
    const { id } = await ask();
    await answer(id, asDrawn).expect(200);
    await follow(everyone.architect, id, "closed").expect(200);
    const kinds = async (by: Browser) =>
      z
        .array(RecordEntry)
        .parse((await by.get(`${room.path}/record`).expect(200)).body)
        .map(({ kind }) => kind)
        .filter((kind) => kind.startsWith("question"));
    expect(await kinds(everyone.owner)).toEqual(["question asked", "question followed", "question followed"]);
    expect(await kinds(everyone.reader)).toEqual([]);
    expect(await questions(everyone.reader)).toEqual([]);
  });
});

describe("who owes whom what", () => {
  const owed = async (by: Browser) => {
    const { body } = await by.get("/api/owed").expect(200);
    const things = z.array(Owed).parse(body);
    return things
      .filter(({ projectId }) => room.path.endsWith(projectId))
      .map(({ what, number, owedBy, owedTo }) => [what, number, owedBy, owedTo]);
  };

  it("names both sides of every open question and condition, what is needed first coming first", async () => {
    const { id } = await ask(everyone.owner);
    await ask(everyone.checker, { neededBy: "2026-12-01" });
    expect(await owed(everyone.architect)).toEqual([
      ["answer", 2, "engineer", "checker"],
      ["answer", 1, "engineer", "owner"],
    ]);
    const conditions = [{ id: randomUUID(), text: "Pack the seat.", owedBy: "architect" as const }];
    await answer(id, { kind: "with conditions", text: null, conditions }).expect(200);
    expect(await owed(everyone.owner)).toEqual([
      ["answer", 2, "engineer", "checker"],
      ["question to close", 1, "owner", "engineer"],
      ["condition", 1, "architect", "engineer"],
    ]);
    expect(await owed(everyone.reader)).toEqual([]);
  });
});

describe("conditions of an answer", () => {
  const withConditions = (): Answer & { kind: "with conditions" } => ({
    ...{ kind: "with conditions", text: null },
    conditions: [
      { id: randomUUID(), text: "Pack the seat to 12 mm.", owedBy: "architect" },
      { id: randomUUID(), text: "Agree the crane.", owedBy: "owner" },
    ],
  });
  const met = (by: Browser, id: string) =>
    by.post(`${room.path}/conditions/${id}/met`, { id: randomUUID(), text: "Drawn in." });
  const judge = (by: Browser, id: string, step: "closed" | "reopened") =>
    by.post(`${room.path}/conditions/${id}/steps`, {
      ...{ step, id: randomUUID() },
      ...(step === "closed" ? {} : { text: "Not so." }),
    });

  it("are numbered, stay open over later revisions, and are closed by the engineer once they are met", async () => {
    const { id } = await ask();
    const given = withConditions();
    await answer(id, given).expect(200);
    await room.send([move(2, 30_000_000)]);
    const [packing, crane] = await conditions();
    expect(packing).toMatchObject({ number: 1, state: "open", waitsFor: "architect", source: "answer", revision: "A" });
    expect(crane).toMatchObject({ number: 2, state: "open", waitsFor: "owner" });
    const first = given.conditions[0]?.id ?? "";
    expectProblem(await judge(everyone.engineer, first, "closed"), "step-refused");
    expectProblem(await met(everyone.owner, first), "closer-refused");
    expect((await met(everyone.architect, first).expect(200)).body).toMatchObject({
      state: "met",
      waitsFor: "engineer",
    });
    expectProblem(await judge(everyone.architect, first, "closed"), "role-refused");
    expectProblem(await judge(everyone.checker, first, "closed"), "closer-refused");
    await judge(everyone.engineer, first, "reopened").expect(200);
    await met(everyone.architect, first).expect(200);
    expect((await judge(everyone.engineer, first, "closed").expect(200)).body).toMatchObject({ state: "closed" });
    expect((await conditions()).map(({ state }) => state)).toEqual(["closed", "open"]);
  });

  it("are refused where the engineer would owe one, and nothing is written", async () => {
    const { id } = await ask();
    const given = withConditions();
    const own = { ...given, conditions: given.conditions.map((each) => ({ ...each, owedBy: "engineer" as const })) };
    const problem = expectProblem(await answer(id, own), "body-invalid");
    expect(problem.fields?.[0]?.pointer).toBe("/answer/conditions/0/owedBy");
    expect(await conditions()).toEqual([]);
    expect((await questions())[0]?.state).toBe("asked");
  });
});
