import { randomUUID } from "node:crypto";
import { unzipSync, zipSync, strToU8 } from "fflate";
import { ArchiveBroughtIn, canonicalJson, ListedKey, RecordEntry, SignedHead } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import supertest from "supertest";
import { z } from "zod";
import { manifestName, readArchive } from "../../src/archive/project-archive.ts";
import { openZip } from "../../src/archive/zip.ts";
import { verifyBundle } from "../../src/record/verify-bundle.ts";
import { bringInArchive } from "../../src/services/archive/bring-in-archive.ts";
import { takeArchive } from "../../src/services/archive/take-archive.ts";
import { leftOut, readProjectTables } from "../../src/store/project-tables.ts";
import { everythingOf, workIn } from "../support/archived-project.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { openReviewRoom, signInAll, type ReviewRoom } from "../support/review-room.ts";
import { act, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";
import { Visitor } from "../support/visitor.ts";

let here: TestService;
let there: TestService;
let room: ReviewRoom;
let administrator: Browser;
let archive: Buffer;
let projectId: string;

const keyOf = async ({ app }: TestService): Promise<string> =>
  z
    .array(ListedKey)
    .parse((await supertest(app.server).get("/api/record-keys")).body)
    .at(-1)?.fingerprint ?? "";

const take = async (by: Browser, path: string): Promise<Buffer> =>
  (await by.get(`${path}/archive`).responseType("blob").expect(200)).body as Buffer;

const bringIn = (by: Browser, bytes: Uint8Array, query = "") =>
  by
    .post(`/api/archives${query}`)
    .attach("file", Buffer.from(bytes), { filename: "a.zip", contentType: "application/zip" });

async function asAdministrator(service: TestService): Promise<Browser> {
  const browser = await service.signIn("outsider");
  await service.owner.connection.person.update({ where: { id: browser.person.id }, data: { administrator: true } });
  return browser;
}

beforeAll(async () => {
  here = await startService({ WORKER: "apart", SECRETS_KEY: "12".repeat(32) });
  there = await startService({ WORKER: "apart", SECRETS_KEY: "34".repeat(32) });
  room = await openReviewRoom(here, await signInAll(here));
  ({ projectId } = room);
  await workIn(room);
  archive = await take(room.by.architect, room.path);
  administrator = await asAdministrator(there);
});
afterAll(async () => {
  await there?.close();
  await here?.close();
});

describe("the archive of a project", () => {
  it("holds a file for every table of a project, however many there come to be", async () => {
    const { connection } = here.owner;
    const names = Object.keys(unzipSync(archive));
    const tables = await readProjectTables(connection);
    expect(names.filter((name) => name.startsWith("rows/"))).toEqual(tables.map(({ name }) => `rows/${name}.json`));
    const all = await connection.$queryRaw<{ name: string }[]>`
      select table_name::text as "name" from information_schema.columns where table_schema = 'public' and column_name = 'project_id'`;
    const known = [...tables.map(({ name }) => name), ...leftOut].toSorted();
    expect(known).toEqual(all.map(({ name }) => name).toSorted());
  });

  it("lets its files be opened without the service: a kept PDF is that PDF", () => {
    const pdf = Object.entries(unzipSync(archive)).filter(([name]) => /^files\/kept_file\/.*\.pdf$/.test(name));
    expect(pdf.map(([, bytes]) => Buffer.from(bytes).subarray(0, 8).toString("latin1"))).toEqual(["%PDF-1.7"]);
  });

  it("comes back elsewhere as it was: every row, every digest, every head of the record", async () => {
    const names = (await readProjectTables(here.owner.connection)).map(({ name }) => name);
    const before = await everythingOf(here.owner.connection, projectId, [...names, "record_entry", "record_payload"]);
    const answer = await bringIn(administrator, archive, `?key=${await keyOf(here)}`).expect(201);
    const told = ArchiveBroughtIn.parse(answer.body);
    expect(told).toMatchObject({ projectId, name: "Lock Lane", signedBy: await keyOf(here) });
    const after = await everythingOf(there.owner.connection, projectId, names);
    for (const name of names) expect(after.get(name), name).toEqual(before.get(name));
    expect([...before.values()].flat().length).toBeGreaterThan(20);
    const where = { projectId, number: { lte: told.entries } };
    const entries = (db: TestService) =>
      db.owner.connection.recordEntry.findMany({ where, orderBy: { number: "asc" } });
    expect(await entries(there)).toEqual(await entries(here));
    const payloads = (db: TestService) =>
      db.owner.connection.recordPayload.findMany({ where, orderBy: { number: "asc" } });
    expect(await payloads(there)).toEqual(await payloads(here));
  });

  it("is marked with who signed it, and nothing of it is signed anew: of its heads only the one it came with is given", async () => {
    const invited = await administrator.post(`/api/projects/${projectId}/invitations`, {
      ...{ email: there.people.owner.email, role: "owner", partEndsAt: null },
    });
    const owner = await new Visitor(there, await there.signIn("owner")).enter(invited.body.path, { as: "signed in" });
    const path = `/api/projects/${projectId}`;
    const record = z.array(RecordEntry).parse((await owner.get(`${path}/record?limit=500`).expect(200)).body);
    const mark = record.find(({ kind }) => kind === "brought in");
    if (mark?.payload?.kind !== "brought in") throw new Error("it is not marked");
    const { upTo, head } = mark.payload;
    expect(mark).toMatchObject({ number: upTo + 1, actor: { role: "administrator" } });
    expect(head.fingerprint).toBe(await keyOf(here));
    const headAt = async (number: number | null) =>
      owner.get(`${path}/record/head${number === null ? "" : `?number=${number}`}`);
    expect(SignedHead.parse((await headAt(upTo)).body)).toEqual(head);
    expectProblem(await headAt(upTo - 1), "signed-elsewhere");
    expect(SignedHead.parse((await headAt(upTo + 1)).body).fingerprint).toBe(await keyOf(there));
    const text = (await owner.get(`${path}/record/bundle`).expect(200)).text;
    const found = verifyBundle(text, { fingerprint: await keyOf(there) });
    expect(found).toMatchObject({ whole: true, broughtIn: [{ number: upTo + 1, upTo, head }] });
  });

  it("gives nobody a part, and goes on as any project does once someone is asked in", async () => {
    const architect = await there.signIn("architect");
    expectProblem(await architect.get(`/api/projects/${projectId}`), "not-found");
    const made = await administrator.post(`/api/projects/${projectId}/invitations`, {
      ...{ email: architect.person.email, role: "architect", partEndsAt: null },
    });
    const drawing = await new Visitor(there, architect).enter(made.body.path, { as: "signed in" });
    const { body } = await drawing.get(`/api/projects/${projectId}/draft`).expect(200);
    await drawing.post(`/api/projects/${projectId}/draft/acts`, act(Number(body.number), [place(3)])).expect(200);
  });

  it("is taken by the architect, who sees all of it, and never takes the place of what is here", async () => {
    for (const role of ["engineer", "checker", "owner", "reader"] as const)
      expectProblem(await room.by[role].get(`${room.path}/archive`), "role-refused");
    expectProblem(await bringIn(administrator, archive), "project-here");
    expectProblem(await bringIn(await there.signIn("architect"), archive), "administrator-only");
  });
});

/** Why an archive is refused; nothing of it is left behind. */
async function refused(bytes: Uint8Array, fingerprint?: string): Promise<string> {
  const by = { id: administrator.person.id, name: "Test outsider", role: "administrator" as const };
  const tables = ["record_entry", "revision", "draft", "kept_file"];
  const count = async () => {
    const rows = await everythingOf(there.owner.connection, projectId, tables);
    return [...rows.values()].flat().length;
  };
  const before = await count();
  const outcome = await bringInArchive(there.owner, by, {
    bytes,
    fingerprint,
  });
  expect(await count()).toBe(before);
  if (outcome.ok) throw new Error("it was taken");
  expect(outcome.refusal.code).toBe("archive-refused");
  return String(outcome.refusal.detail);
}

describe("an archive that is not whole", () => {
  const parts = () => unzipSync(archive);
  const again = (files: Record<string, Uint8Array>) => zipSync(files);

  it("is refused wherever it is cut short", async () => {
    for (const part of [0, 0.1, 0.5, 0.9, 0.999])
      expect(await refused(archive.subarray(0, Math.floor(archive.length * part)))).toMatch(/^it is not a whole ZIP/);
  });

  it("is refused when one byte of any file in it is another", async () => {
    for (const name of Object.keys(parts())) {
      const files = parts();
      const bytes = Uint8Array.from(files[name] ?? []);
      const middle = Math.floor(bytes.length / 2);
      bytes[middle] = (bytes[middle] ?? 0) ^ 1;
      files[name] = bytes;
      expect(await refused(again(files)), name).toMatch(
        name === manifestName ? /archive\.json|archive does not|head|keys/ : /not the file that was stated/,
      );
    }
  });

  it("is refused when a file is taken out or put in", async () => {
    for (const name of Object.keys(parts()).filter((each) => each !== manifestName)) {
      const files = parts();
      delete files[name];
      expect(await refused(again(files))).toBe(`${name}: is missing`);
    }
    expect(await refused(again({ ...parts(), "../../etc/passwd": strToU8("x") }))).toBe(
      "../../etc/passwd: is not stated",
    );
    const { [manifestName]: _none, ...rest } = parts();
    expect(await refused(again(rest))).toBe(`there is no ${manifestName} in it`);
  });

  it("is refused when it states a later form than is known, and says so at the place", async () => {
    const manifest = JSON.parse(Buffer.from(parts()[manifestName] ?? []).toString("utf8"));
    const later = { ...parts(), [manifestName]: strToU8(canonicalJson({ ...manifest, archive: 2 })) };
    expect(await refused(again(later))).toMatch(/^archive\.json: \/archive: /);
  });

  it("is refused when it is whole and signed by another key than is known from outside", async () => {
    expect(await refused(archive, "ab".repeat(32))).toBe(
      "record.json: no key of it has the fingerprint that was expected",
    );
  });

  it("is refused before anything is unfolded when it is larger, holds more, or is folded more tightly than is taken", async () => {
    const limits = { fileBytes: 10_000, unfoldedBytes: 1_000_000, files: 3, ratio: 50 };
    const zeros = zipSync({ a: new Uint8Array(900_000) });
    expect(zeros.length).toBeLessThan(2_000);
    expect(await openZip(zeros, limits)).toMatchObject({ ok: false, fault: /unfolds to more than is taken/ });
    const many = zipSync(Object.fromEntries(["a", "b", "c", "d"].map((name) => [name, strToU8(name)])));
    expect(await openZip(many, limits)).toEqual({ ok: false, fault: "it holds more than 3 files" });
    expect(await openZip(new Uint8Array(10_001), limits)).toEqual({
      ok: false,
      fault: "it is larger than 10000 bytes",
    });
  });

  it("gets no more room than it states for what it unfolds to, whatever it holds", async () => {
    const lying = Buffer.from(zipSync({ a: new Uint8Array(900_000) }));
    const stated = (at: number) => lying.readUInt32LE(at) === 900_000 && lying.writeUInt32LE(100, at);
    for (let at = 0; at < lying.length - 4; at += 1) stated(at);
    const opened = await openZip(lying, { fileBytes: 10_000, unfoldedBytes: 1_000, files: 3, ratio: 50 });
    if (opened.ok) expect(opened.files.get("a")?.byteLength).toBeLessThanOrEqual(100);
    else expect(opened.fault).toMatch(/not a whole ZIP/);
  });

  it("is refused when its record is not the one whose head it states", async () => {
    const other = await openReviewRoom(here, room.by);
    const theirs = unzipSync(await take(other.by.architect, other.path));
    expect(await refused(again({ ...parts(), "record.json": theirs["record.json"] ?? new Uint8Array() }))).toMatch(
      /record\.json: is not the file that was stated/,
    );
  });
});

it("an archive of a project that was brought in is whole elsewhere again, with both who signed", async () => {
  const third = await startService({ WORKER: "apart", SECRETS_KEY: "56".repeat(32) });
  try {
    const taken = await takeArchive(there.owner, projectId, "34".repeat(32));
    if (!taken.ok) throw new Error(taken.refusal.code);
    const found = await readArchive(taken.value.bytes, {});
    expect(found.whole).toBe(true);
    const by = await asAdministrator(third);
    const told = ArchiveBroughtIn.parse((await bringIn(by, taken.value.bytes).expect(201)).body);
    expect(told.signedBy).toBe(await keyOf(there));
    const marks = await third.owner.connection.recordEntry.findMany({ where: { projectId, kind: "brought in" } });
    expect(marks).toHaveLength(2);
  } finally {
    await third.close();
  }
});

it("no archive is taken where nothing can be signed", async () => {
  const unsigned = await startService({ WORKER: "apart" });
  try {
    const id = await unsigned.openProject();
    const architect = await unsigned.signIn("architect");
    expectProblem(await architect.get(`/api/projects/${id}/archive`), "signing-off");
    expectProblem(await architect.get(`/api/projects/${randomUUID()}/archive`), "not-found");
  } finally {
    await unsigned.close();
  }
});
