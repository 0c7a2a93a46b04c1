import { randomUUID } from "node:crypto";
import {
  ChangeRequest,
  Draft,
  Note,
  Project,
  RecordEntry,
  RequestAnswered,
  RequestPreview,
  Revision,
  RevisionSummary,
  Stamp,
  Thread,
  operationsBetween,
  resultDigest,
  type NewRequest,
  type NewRevision,
  type NewStamp,
} from "@cornerway/schema";
import { assessForRecord } from "@cornerway/engine";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { heldUnit } from "../support/held-unit.ts";
import { act, move, note, place, post } from "../support/sample.ts";
import { password, startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let architect: Browser;
let engineer: Browser;
let path: string;

beforeAll(async () => {
  service = await startService();
  architect = await service.signIn("architect");
  engineer = await service.signIn("engineer");
});
afterAll(() => service.close());
beforeEach(async () => {
  path = `/api/projects/${await service.openProject()}`;
  await draw(0, place(1));
});

const readDraft = async () => Draft.parse((await architect.get(`${path}/draft`).expect(200)).body);
const draw = (base: number, ...operations: Parameters<typeof act>[1]) =>
  architect.post(`${path}/draft/acts`, act(base, operations)).expect(200);

async function newRevision(more: Partial<NewRevision> = {}): Promise<NewRevision> {
  const { number: draftNumber, contentDigest } = await readDraft();
  return { id: randomUUID(), draftNumber, contentDigest, remark: null, ...more };
}

async function send(): Promise<RevisionSummary> {
  return RevisionSummary.parse((await architect.post(`${path}/revisions`, await newRevision()).expect(202)).body);
}

async function assessed(letter: string): Promise<Revision> {
  const read = async () => Revision.parse((await engineer.get(`${path}/revisions/${letter}`).expect(200)).body);
  await expect.poll(async () => (await read()).assessment, { timeout: 120_000, interval: 50 }).toBe("done");
  return read();
}

function newRequest({ letter: revision, contentDigest }: RevisionSummary, more: Partial<NewRequest> = {}): NewRequest {
  const operations = [1, 2].map((n) => ({ kind: "post.set" as const, post: post(n) }));
  return { id: randomUUID(), revision, contentDigest, text: "Two posts here.", operations, ...more };
}

function newStamp(revision: Revision, more: Partial<NewStamp> = {}): NewStamp {
  const { letter, contentDigest, resultDigest: result } = revision;
  const digests = { contentDigest, resultDigest: result ?? "" };
  return {
    id: randomUUID(),
    revision: letter,
    disposition: "Revise and resubmit",
    text: "See the notes.",
    ...digests,
    ...more,
  };
}

const press = (stamp: object) => engineer.post(`${path}/stamps`, { stamp, password });

const kinds = async () =>
  z
    .array(RecordEntry)
    .parse((await architect.get(`${path}/record`)).body)
    .map(({ kind }) => kind)
    .slice(6);

describe("POST revisions", () => {
  it("answers before the revision is assessed, and the server's own answer follows", async () => {
    const sent = await send();
    expect(sent).toMatchObject({ letter: "A", assessment: "waiting", verdict: "not checked", resultDigest: null });
    const revision = await assessed("A");
    expect(revision.scheme).toEqual((await readDraft()).scheme);
    const answer = assessForRecord(revision.scheme);
    if (!answer.accepted) throw new Error("there are no hazards to refuse");
    expect(revision.resultDigest).toBe(resultDigest(sent.contentDigest, answer.assessment, answer.proof));
    expect(await kinds()).toEqual(["drawn", "revision sent", "assessed"]);
  });

  it("is one revision when it is sent twice", async () => {
    const body = await newRevision();
    const [first, again] = [
      await architect.post(`${path}/revisions`, body),
      await architect.post(`${path}/revisions`, body),
    ];
    expect([first.status, again.status, again.body.letter]).toEqual([202, 202, first.body.letter]);
    expectProblem(await architect.post(`${path}/revisions`, { ...body, remark: "other" }), "id-reused");
    expect(z.array(RevisionSummary).parse((await architect.get(`${path}/revisions`)).body)).toHaveLength(1);
  });

  it("shows the difference when the draft is no longer what is on the screen", async () => {
    const body = await newRevision();
    await draw(1, move(1, 2_000_000));
    const problem = expectProblem(await architect.post(`${path}/revisions`, body), "digest-mismatch");
    expect(problem.conflict).toMatchObject({
      draftNumber: 2,
      elements: ["g1"],
      theirs: [{ operations: [move(1, 2_000_000)] }],
    });
  });

  it("refuses an empty sheet, an unchanged draft, and a draft number not reached", async () => {
    expectProblem(await architect.post(`${path}/revisions`, await newRevision({ draftNumber: 9 })), "draft-base-ahead");
    await send();
    expectProblem(await architect.post(`${path}/revisions`, await newRevision()), "revision-unchanged");
    await draw(1, { kind: "container.remove", id: "g1" });
    expectProblem(await architect.post(`${path}/revisions`, await newRevision()), "nothing-drawn");
  });

  it("letters revisions in order and lists the last one first", async () => {
    await send();
    await draw(1, place(2));
    await send();
    const all = z.array(RevisionSummary).parse((await architect.get(`${path}/revisions`)).body);
    expect(all.map(({ letter }) => letter)).toEqual(["B", "A"]);
    expectProblem(await architect.get(`${path}/revisions/C`), "not-found");
    expectProblem(await architect.get(`${path}/revisions/abc`), "body-invalid");
  });
});

describe("notes", () => {
  it("are pinned to an element of a revision or of the draft, and answered, and settled once", async () => {
    await send();
    const asked = Note.parse((await engineer.post(`${path}/notes`, note("g1", { revision: "A" })).expect(201)).body);
    await architect.post(`${path}/notes`, note("g1", { answers: asked.id, text: "A pad." })).expect(201);
    const settled = Note.parse((await engineer.post(`${path}/notes/${asked.id}/settle`).expect(200)).body);
    expect(settled.settledAt).not.toBeNull();
    expect((await engineer.post(`${path}/notes/${asked.id}/settle`).expect(200)).body).toEqual(settled);
    const { notes } = Thread.parse((await architect.get(`${path}/thread`)).body);
    expect(notes.map(({ answers, settledAt }) => [answers, settledAt])).toEqual([
      [null, settled.settledAt],
      [asked.id, null],
    ]);
    expect((await kinds()).filter((kind) => kind.startsWith("note"))).toEqual([
      "note written",
      "note written",
      "note settled",
    ]);
  });

  it("are one note when sent twice, and refused under another note's id", async () => {
    const body = note("g1");
    const first = await engineer.post(`${path}/notes`, body).expect(201);
    expect((await engineer.post(`${path}/notes`, body).expect(201)).body).toEqual(first.body);
    expectProblem(await engineer.post(`${path}/notes`, { ...body, text: "Other words" }), "id-reused");
    expectProblem(await architect.post(`${path}/notes`, body), "id-reused");
  });

  it("name the field when element, mark, revision or note is not there", async () => {
    await send();
    await assessed("A");
    const pointer = async (more: Partial<Parameters<typeof note>[1]>, code: "element-unknown" | "body-invalid") =>
      expectProblem(await engineer.post(`${path}/notes`, note("g1", more)), code).fields?.[0]?.pointer;
    expect(await pointer({ elementId: "g9" }, "element-unknown")).toBe("/elementId");
    expect(await pointer({ revision: "A", markId: "overhang:g1" }, "element-unknown")).toBe("/markId");
    expect(await pointer({ revision: "Z" }, "body-invalid")).toBe("/revision");
    expect(await pointer({ answers: randomUUID() }, "body-invalid")).toBe("/answers");
    expect(await pointer({ text: "half a character \ud800" }, "body-invalid")).toBe("/text");
    expect(await pointer({ text: "NUL \0" }, "body-invalid")).toBe("/text");
  });

  it("on the draft are not for those who do not see it", async () => {
    expectProblem(await (await service.signIn("owner")).post(`${path}/notes`, note("g1")), "role-refused");
  });

  it("of another project are not found here", async () => {
    const { body } = await engineer.post(`${path}/notes`, note("g1")).expect(201);
    const other = `/api/projects/${await service.openProject()}`;
    expectProblem(await engineer.post(`${other}/notes/${body.id}/settle`), "not-found");
  });

  it("keep one spelling of a text: NFC", async () => {
    const { body } = await engineer.post(`${path}/notes`, note("g1", { text: "Cafe\u0301" })).expect(201);
    expect(body.text).toBe("Caf\u00e9");
  });
});

describe("requests", () => {
  it("are previewed without changing anything, taken in as one act, and answered once", async () => {
    const sent = await send();
    const request = ChangeRequest.parse((await engineer.post(`${path}/requests`, newRequest(sent)).expect(201)).body);
    expect(request).toMatchObject({ number: 1, state: "open", answer: null });
    const preview = RequestPreview.parse(
      (await architect.get(`${path}/requests/${request.id}/preview`).expect(200)).body,
    );
    expect(preview).toMatchObject({ draftNumber: 1, changed: [], refusal: null });
    expect((await readDraft()).number).toBe(1);
    const answer = { answer: "take in", actId: randomUUID(), base: 1 };
    const first = RequestAnswered.parse(
      (await architect.post(`${path}/requests/${request.id}/answer`, answer).expect(200)).body,
    );
    expect(first.request.state).toBe("taken in");
    expect(first.draft?.contentDigest).toBe(preview.contentDigest);
    expect(await readDraft()).toMatchObject({ number: 2, contentDigest: preview.contentDigest, movesSinceRevision: 1 });
    expect((await architect.post(`${path}/requests/${request.id}/answer`, answer).expect(200)).body).toEqual(first);
    expectProblem(
      await architect.post(`${path}/requests/${request.id}/answer`, { answer: "decline", reason: "no" }),
      "already-answered",
    );
  });

  it("are declined with a reason", async () => {
    const { body } = await engineer.post(`${path}/requests`, newRequest(await send())).expect(201);
    const declined = RequestAnswered.parse(
      (
        await architect
          .post(`${path}/requests/${body.id}/answer`, { answer: "decline", reason: "No room for posts." })
          .expect(200)
      ).body,
    );
    expect(declined).toMatchObject({
      draft: null,
      request: { state: "declined", answer: { reason: "No room for posts." } },
    });
  });

  it("conflict when what they touch changed since the revision, and stay open", async () => {
    const sent = await send();
    const { body } = await engineer
      .post(`${path}/requests`, newRequest(sent, { operations: [move(1, 3_000_000)] }))
      .expect(201);
    await draw(1, move(1, 1_000_000));
    expect(RequestPreview.parse((await architect.get(`${path}/requests/${body.id}/preview`)).body).changed).toEqual([
      "g1",
    ]);
    const answer = { answer: "take in", actId: randomUUID(), base: 2 };
    expectProblem(await architect.post(`${path}/requests/${body.id}/answer`, answer), "draft-conflict");
    expect(Thread.parse((await architect.get(`${path}/thread`)).body).requests[0]?.state).toBe("open");
  });

  it("are refused on an old revision, on another digest, and when that revision cannot take them", async () => {
    const sent = await send();
    expectProblem(
      await engineer.post(`${path}/requests`, newRequest(sent, { contentDigest: "0".repeat(64) })),
      "digest-mismatch",
    );
    expectProblem(
      await engineer.post(`${path}/requests`, newRequest(sent, { operations: [place(1)] })),
      "draft-refused",
    );
    expectProblem(await engineer.post(`${path}/requests`, newRequest(sent, { revision: "Q" })), "body-invalid");
    await draw(1, place(2));
    await send();
    expectProblem(await engineer.post(`${path}/requests`, newRequest(sent)), "revision-superseded");
  });

  it("of no one are not found, and an act id that is taken is refused", async () => {
    expectProblem(await architect.get(`${path}/requests/${randomUUID()}/preview`), "not-found");
    const { body } = await engineer.post(`${path}/requests`, newRequest(await send())).expect(201);
    const taken = act(1, [place(3)]);
    await architect.post(`${path}/draft/acts`, taken).expect(200);
    const answer = { answer: "take in", actId: taken.id, base: 2 };
    expectProblem(await architect.post(`${path}/requests/${body.id}/answer`, answer), "id-reused");
    const ahead = { ...answer, actId: randomUUID(), base: 9 };
    expectProblem(await architect.post(`${path}/requests/${body.id}/answer`, ahead), "draft-base-ahead");
  });
});

describe("stamps", () => {
  it("carry both digests on the engineer's screen, are pressed once, and turn the project to the architect", async () => {
    await send();
    const body = newStamp(await assessed("A"));
    const stamp = Stamp.parse((await press(body).expect(201)).body);
    expect((await press(body).expect(201)).body).toEqual(stamp);
    expectProblem(await press({ ...body, text: "Other" }), "id-reused");
    expectProblem(await press({ ...body, id: randomUUID() }), "already-answered");
    const project = Project.parse((await architect.get(path).expect(200)).body);
    expect(project).toMatchObject({
      stamp,
      waitsFor: "architect",
      since: stamp.pressedAt,
      revision: "A",
      containers: 1,
    });
    expect(project.members.map(({ roles: held }) => held.join())).toEqual([
      "architect",
      "checker",
      "engineer",
      "owner",
      "reader",
    ]);
  });

  it.each(["No exceptions taken", "Make corrections noted"] as const)(
    "%s is not open where strength is judged under gravity alone, and says so",
    async (disposition) => {
      await send();
      const condition = { id: randomUUID(), text: "State wind, snow and earthquake.", owedBy: "architect" } as const;
      const conditions = disposition === "Make corrections noted" ? [condition] : [];
      const pressed = await press(newStamp(await assessed("A"), { disposition, conditions }));
      expect(expectProblem(pressed, "stamp-not-open").detail).toMatch(/Gravity alone.*not entered.*not checked/);
    },
  );

  it("without exceptions is open on a unit that works under all loads of its place, once no request is open", async () => {
    const { number, scheme } = await readDraft();
    await draw(number, ...operationsBetween(scheme, heldUnit()));
    const sent = await send();
    const revision = await assessed("A");
    expect(revision.result?.scope).toBe("load path, and strength under all loads");
    expect(revision.verdict).toBe("works as built");
    const asked = newRequest(sent);
    await engineer.post(`${path}/requests`, asked).expect(201);
    const body = newStamp(revision, { disposition: "No exceptions taken" });
    expect(expectProblem(await press(body), "stamp-not-open").detail).toBe("1 change request is open.");
    const decline = { answer: "decline", reason: "It stands without." };
    await architect.post(`${path}/requests/${asked.id}/answer`, decline).expect(200);
    expect((await press(body).expect(201)).body.disposition).toBe("No exceptions taken");
  });

  it("are refused on other digests, on an unknown revision and on one with a newer one", async () => {
    await send();
    const revision = await assessed("A");
    const other = (more: Partial<NewStamp>) => press(newStamp(revision, more));
    expect(expectProblem(await other({ contentDigest: "0".repeat(64) }), "digest-mismatch").fields?.[0]?.pointer).toBe(
      "/contentDigest",
    );
    expect(expectProblem(await other({ resultDigest: "0".repeat(64) }), "digest-mismatch").fields?.[0]?.pointer).toBe(
      "/resultDigest",
    );
    expectProblem(await other({ revision: "B" }), "body-invalid");
    await draw(1, place(2));
    await send();
    expectProblem(await other({}), "revision-superseded");
  });
});
