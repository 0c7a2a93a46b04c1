import { randomUUID } from "node:crypto";
import { Draft, DraftActDone, RecordEntry } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { act, move, place, post, unit } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let architect: Browser;
let path: string;

beforeAll(async () => {
  service = await startService();
  architect = await service.signIn("architect");
});
afterAll(() => service.close());
beforeEach(async () => {
  path = `/api/projects/${await service.openProject()}`;
});

const draw = async (body: object) =>
  DraftActDone.parse((await architect.post(`${path}/draft/acts`, body).expect(200)).body);
const readDraft = async () => Draft.parse((await architect.get(`${path}/draft`).expect(200)).body);
const refused = (body: object) => architect.post(`${path}/draft/acts`, body);

describe("POST draft/acts", () => {
  it("applies an act, numbers the draft, and answers with the digest that the draft then has", async () => {
    const done = await draw(act(0, [place(1), place(2)]));
    const draft = await readDraft();
    expect(done.draftNumber).toBe(1);
    expect(draft).toMatchObject({ number: 1, contentDigest: done.contentDigest, movesSinceRevision: 1 });
    expect(draft.scheme.containers.map(({ id }) => id)).toEqual(["g1", "g2"]);
  });

  it("is one act when it is sent twice, with the first answer again", async () => {
    const body = act(0, [place(1)]);
    expect(await draw(body)).toEqual(await draw(body));
    expect((await readDraft()).number).toBe(1);
  });

  it("refuses another act under an id that is taken", async () => {
    const body = act(0, [place(1)]);
    await draw(body);
    expectProblem(await refused({ ...body, operations: [place(2)] }), "id-reused");
  });

  it("re-bases an act on a stale base when nothing it touches has changed", async () => {
    await draw(act(0, [place(1), place(2)]));
    await draw(act(1, [move(1, 5_000_000)]));
    expect((await draw(act(1, [move(2, 6_000_000)]))).draftNumber).toBe(3);
  });

  it("gives both versions back when the same element changed after the base, and writes nothing", async () => {
    await draw(act(0, [place(1)]));
    await draw(act(1, [move(1, 5_000_000)]));
    const problem = expectProblem(await refused(act(1, [move(1, 7_000_000)])), "draft-conflict");
    expect(problem.conflict).toEqual({
      draftNumber: 2,
      elements: ["g1"],
      theirs: [{ draftNumber: 2, by: "Test architect", operations: [move(1, 5_000_000)] }],
      mine: [move(1, 7_000_000)],
    });
    expect((await readDraft()).number).toBe(2);
  });

  it("sees a conflict in two labels that are the same", async () => {
    await draw(act(0, [place(1)]));
    const twin = { kind: "container.place", container: { ...unit(2), tag: "G1" } };
    expect(
      expectProblem(await refused({ ...act(0, []), operations: [twin] }), "draft-conflict").conflict?.elements,
    ).toEqual(["tag:G1"]);
  });

  it("names the operation that the scheme cannot take, and applies none of the others", async () => {
    const problem = expectProblem(
      await refused(act(0, [place(1), { kind: "post.remove", id: "p9" }])),
      "draft-refused",
    );
    expect(problem.fields?.map(({ pointer }) => pointer)).toEqual(["/operations/1"]);
    expect(await readDraft()).toMatchObject({ number: 0, scheme: { containers: [] } });
  });

  it("refuses a base that the draft has not reached", async () => {
    expectProblem(await refused(act(1, [place(1)])), "draft-base-ahead");
  });

  it("leaves no number behind when it refuses: the record goes on without a gap", async () => {
    await draw(act(0, [place(1)]));
    await refused(act(5, [place(2)]));
    await refused(act(1, [place(1)]));
    await draw(act(1, [place(2)]));
    const entries = z.array(RecordEntry).parse((await architect.get(`${path}/record`).expect(200)).body);
    expect(entries.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });
});

describe("undo", () => {
  it("takes an act back by the inverse that the record gives, and the digest is as before", async () => {
    await draw(act(0, [place(1)]));
    const before = await readDraft();
    const moved = act(1, [move(1, 5_000_000)]);
    await draw(moved);
    await draw(act(2, [move(1, 0)], { undoes: moved.id }));
    expect(await readDraft()).toMatchObject({ number: 3, contentDigest: before.contentDigest });
  });

  it("is a conflict when the element is no longer as that act left it", async () => {
    await draw(act(0, [place(1)]));
    const moved = act(1, [move(1, 5_000_000)]);
    await draw(moved);
    await draw(act(2, [move(1, 6_000_000)]));
    expectProblem(await refused(act(3, [move(1, 0)], { undoes: moved.id })), "draft-conflict");
  });

  it("is possible again once the later act on the same element is itself undone", async () => {
    await draw(act(0, [place(1)]));
    const first = act(1, [move(1, 5_000_000)]);
    const second = act(2, [move(1, 6_000_000)]);
    await draw(first);
    await draw(second);
    await draw(act(3, [move(1, 5_000_000)], { undoes: second.id }));
    expect((await draw(act(4, [move(1, 0)], { undoes: first.id }))).draftNumber).toBe(5);
  });

  it("is done once: a second undo of the same act is a conflict", async () => {
    await draw(act(0, [place(1)]));
    const moved = act(1, [move(1, 5_000_000)]);
    await draw(moved);
    await draw(act(2, [move(1, 0)], { undoes: moved.id }));
    expectProblem(await refused(act(3, [move(1, 0)], { undoes: moved.id })), "draft-conflict");
  });

  it("refuses operations that are not the inverse, and acts it does not know", async () => {
    const placed = act(0, [place(1)]);
    await draw(placed);
    expect(
      expectProblem(await refused(act(1, [place(2)], { undoes: placed.id })), "body-invalid").fields?.[0]?.pointer,
    ).toBe("/operations");
    expect(
      expectProblem(await refused(act(1, [place(2)], { undoes: randomUUID() })), "body-invalid").fields?.[0]?.pointer,
    ).toBe("/undoes");
  });
});

describe("what is sent to draft/acts", () => {
  it("names every field that is not as it must be, and those that do not exist", async () => {
    const container = { ...unit(1), xUm: 0.5, colour: "red" };
    const body = { ...act(0, []), operations: [{ kind: "container.place", container }], hurry: true };
    const pointers = expectProblem(await refused(body), "body-invalid").fields?.map(({ pointer }) => pointer);
    expect(pointers?.sort()).toEqual(["/hurry", "/operations/0/container/colour", "/operations/0/container/xUm"]);
  });

  it("refuses more than 5,000 operations at the field", async () => {
    const posts = Array.from({ length: 5001 }, (_, n) => ({ kind: "post.set", post: post(n) }));
    expect(
      expectProblem(await refused({ ...act(0, []), operations: posts }), "body-invalid").fields?.[0]?.pointer,
    ).toBe("/operations");
  });

  it("refuses a body over 4 MiB as too large, and over 256 KiB where nothing is drawn", async () => {
    expectProblem(await refused({ ...act(0, [place(1)]), filler: "x".repeat(4 * 1024 * 1024) }), "body-too-large");
    const note = { filler: "x".repeat(256 * 1024) };
    expectProblem(await architect.post(`${path}/notes`, note), "body-too-large");
  });

  it("refuses text that is not JSON, other media types, and prototype tricks", async () => {
    const raw = (type: string, text: string) =>
      architect.post(`${path}/draft/acts`).set("content-type", type).send(text);
    expectProblem(await raw("application/json", "{"), "body-not-json");
    expectProblem(await raw("application/json", ""), "body-not-json");
    expectProblem(await raw("application/json", '{"__proto__":{"x":1}}'), "body-not-json");
    expectProblem(await raw("text/plain", "{}"), "media-type");
  });

  it("tells a page that writes another version of the scheme to reload", async () => {
    const old = architect.post(`${path}/draft/acts`, act(0, [place(1)])).set("scheme-version", "0");
    expectProblem(await old, "version-unknown");
  });
});
