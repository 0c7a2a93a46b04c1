import { randomUUID } from "node:crypto";
import { cautions, Draft, DraftActDone, RecordEntry, SchemeFile, type Container } from "@cornerway/schema";
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
  await architect.post(`${path}/draft/acts`, act(0, [place(1), place(2)])).expect(200);
});

const readDraft = async () => Draft.parse((await architect.get(`${path}/draft`).expect(200)).body);
const save = async () => SchemeFile.parse((await architect.get(`${path}/draft/file`).expect(200)).body);
const bring = (file: unknown, base: number, id: string = randomUUID()) =>
  architect.post(`${path}/draft/file`, { id, base, file });

/** The saved file with other containers in it. */
const withUnits = async (containers: Container[]) => {
  const file = await save();
  return { ...file, scheme: { ...file.scheme, containers } };
};

describe("GET draft/file", () => {
  it("is an attachment that carries the cautions, the digest and the scheme", async () => {
    const answer = await architect.get(`${path}/draft/file`).expect(200);
    expect(answer.headers["content-disposition"]).toBe('attachment; filename="lock-lane-draft-1.json"');
    const { scheme, contentDigest } = await readDraft();
    expect(SchemeFile.parse(answer.body)).toMatchObject({
      cautions: [...cautions],
      revision: null,
      contentDigest,
      scheme,
    });
  });

  it("is for those who see the draft; the file of a revision for those who see that", async () => {
    const reader = await service.signIn("reader");
    expectProblem(await reader.get(`${path}/draft/file`), "role-refused");
    expectProblem(await reader.get(`${path}/revisions/A/file`), "not-found");
    const { number: draftNumber, contentDigest } = await readDraft();
    await architect
      .post(`${path}/revisions`, { id: randomUUID(), draftNumber, contentDigest, remark: null })
      .expect(202);
    const saved = await reader.get(`${path}/revisions/A/file`).expect(200);
    expect(saved.headers["content-disposition"]).toBe('attachment; filename="lock-lane-revision-a.json"');
    expect(SchemeFile.parse(saved.body)).toMatchObject({ revision: "A", contentDigest });
  });
});

describe("POST draft/file", () => {
  it("makes the draft what the file holds, as one act with one entry", async () => {
    const file = await withUnits([unit(3), { ...unit(2), yUm: 3_000_000 }].sort((a, b) => (a.id < b.id ? -1 : 1)));
    const done = DraftActDone.parse((await bring(file, 1).expect(200)).body);
    const draft = await readDraft();
    expect(draft).toMatchObject({ number: 2, contentDigest: done.contentDigest, scheme: file.scheme });
    const read = await architect.get(`${path}/record?after=${done.entry - 1}`).expect(200);
    expect(
      z
        .array(RecordEntry)
        .parse(read.body)
        .map(({ kind }) => kind),
    ).toEqual(["drawn"]);
  });

  it("a file saved in one project and brought into an empty one gives the same content", async () => {
    const file = await save();
    path = `/api/projects/${await service.openProject()}`;
    const done = DraftActDone.parse((await bring(file, 0).expect(200)).body);
    expect(done.contentDigest).toBe(file.contentDigest);
  });

  it("is taken back by its id, and the draft is as before", async () => {
    const before = await readDraft();
    const id = randomUUID();
    await bring(await withUnits([unit(5)]), 1, id).expect(200);
    await architect.post(`${path}/draft/acts/${id}/undo`, { id: randomUUID(), base: 2 }).expect(200);
    expect(await readDraft()).toMatchObject({ number: 3, contentDigest: before.contentDigest });
    expectProblem(
      await architect.post(`${path}/draft/acts/${id}/undo`, { id: randomUUID(), base: 3 }),
      "draft-conflict",
    );
    expectProblem(
      await architect.post(`${path}/draft/acts/${randomUUID()}/undo`, { id: randomUUID(), base: 3 }),
      "not-found",
    );
  });

  it("is one act when it is sent twice", async () => {
    const file = await withUnits([unit(5)]);
    const id = randomUUID();
    const first = await bring(file, 1, id).expect(200);
    expect((await bring(file, 1, id).expect(200)).body).toEqual(first.body);
    expectProblem(await bring(await withUnits([unit(6)]), 2, id), "id-reused");
  });

  it("is a conflict when what it would take away was drawn after its base, and nothing is lost", async () => {
    const file = await withUnits([unit(5)]);
    await architect.post(`${path}/draft/acts`, act(1, [move(1, 4_000_000)])).expect(200);
    const { conflict } = expectProblem(await bring(file, 1), "draft-conflict");
    expect(conflict?.elements).toContain("g1");
    expect((await readDraft()).number).toBe(2);
    expectProblem(await bring(file, 9), "draft-base-ahead");
  });

  it("that holds what the draft is already is refused", async () => {
    expectProblem(await bring(await save(), 1), "draft-refused");
  });

  it("names every fault at its place in the file, and draws nothing", async () => {
    const file = await withUnits([unit(3)]);
    const faulty = { ...file, scheme: { ...file.scheme, containers: [{ ...unit(3), xUm: "far" }], colour: "red" } };
    const pointers = expectProblem(await bring(faulty, 1), "body-invalid").fields?.map(({ pointer }) => pointer);
    expect(pointers).toContain("/file/scheme/containers/0/xUm");
    const twice = { ...file, scheme: { ...file.scheme, containers: [unit(3), { ...unit(4), tag: "G3" }] } };
    expect(expectProblem(await bring(twice, 1), "body-invalid").fields?.[0]?.pointer).toBe(
      "/file/scheme/containers/1/tag",
    );
    expectProblem(await bring({ ...file, scheme: { ...file.scheme, version: 99 } }, 1), "version-unknown");
    expect(expectProblem(await bring({ anything: true }, 1), "body-invalid").fields?.[0]?.pointer).toBe("/file/format");
    expect((await readDraft()).number).toBe(1);
  });

  it("takes a building of 500 units and 4,000 pads in one act, and refuses what takes more than 5,000 operations", async () => {
    const numbered = (letter: string, n: number) => ({
      id: `${letter}${String(n).padStart(5, "0")}`,
      tag: `${letter.toUpperCase()}${n}`,
    });
    const pads = Array.from({ length: 4000 }, (_, n) => ({
      ...numbered("f", n),
      ...{ xUm: n * 1000, yUm: 0, topZUm: 0, turnMdeg: 0, lengthUm: 600_000, widthUm: 600_000, depthUm: 300_000 },
    }));
    const containers = Array.from({ length: 500 }, (_, n) => ({ ...unit(n), ...numbered("u", n) }));
    const postsOnly = (count: number) =>
      Array.from({ length: count }, (_, n) => ({ ...post(n + 1), ...numbered("p", n) }));
    const file = await save();
    const empty = { ...file.scheme, containers: [], posts: [] };
    await bring({ ...file, scheme: { ...empty, containers, pads } }, 1).expect(200);
    const tooMuch = expectProblem(
      await bring({ ...file, scheme: { ...empty, posts: postsOnly(501) } }, 2),
      "draft-refused",
    );
    expect(tooMuch.fields?.[0]?.pointer).toBe("/file/scheme");
    await bring({ ...file, scheme: { ...empty, posts: postsOnly(500) } }, 2).expect(200);
  });
});
