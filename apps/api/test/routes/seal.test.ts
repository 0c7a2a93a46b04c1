import { createHash, randomUUID } from "node:crypto";
import {
  CheckNow,
  ConditionNow,
  KeptFile,
  largestFileBytes,
  RecordEntry,
  SealIssueNow,
  SealState,
  type Assessment,
  type NewCheck,
  type Revision,
} from "@cornerway/schema";
import supertest from "supertest";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { boundTo, openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { move, place } from "../support/sample.ts";
import { password, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];
let room: ReviewRoom;

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  room = await openReviewRoom(service, everyone);
});

/** Strength judged under all loads; the first mark needs the engineer and rests on memory, the others work and are published. */
const judged = (answer: Assessment): Assessment => ({
  ...answer,
  scope: "load path, and strength under all loads",
  marks: answer.marks.map((mark, at) => ({
    ...mark,
    ...(at === 0
      ? { verdict: "needs the engineer" as const, certainty: "memory" as const, basis: "ISO 1496-1, from memory" }
      : { verdict: "works as built" as const, certainty: "published" as const }),
  })),
});

/** The smallest thing that is a PDF by ISO 32000-1 sections 7.5.2 and 7.5.5, with bytes that no text would keep. */
const pdf = (words: string) =>
  Buffer.concat([Buffer.from(`%PDF-1.7\n%${words}\n`), Buffer.from([0, 255, 10, 13]), Buffer.from("\n%%EOF\n")]);
const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");

const attach = (by: Browser, id: string, bytes: Buffer, filename = "calculation.pdf") =>
  supertest(service.app.server)
    .post(`${room.path}/files/${id}`)
    .set("cookie", by.cookie)
    .set("csrf-token", by.csrfToken)
    .attach("file", bytes, { filename, contentType: "application/pdf" });
const keep = async (bytes: Buffer, filename?: string) =>
  KeptFile.parse((await attach(everyone.engineer, randomUUID(), bytes, filename).expect(201)).body);
const download = (by: Browser, id: string) =>
  by
    .get(`${room.path}/files/${id}`)
    .buffer(true)
    .parse((response, done) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("end", () => done(null, Buffer.concat(parts)));
    });
const seal = async (by: Browser = everyone.engineer) =>
  SealState.parse((await by.get(`${room.path}/seal`).expect(200)).body);
const whys = async () => (await seal()).hindrances.map(({ why }) => why);

async function dispose(revision: Revision) {
  const file = await keep(pdf("my own calculation"));
  const body = { id: randomUUID(), ...boundTo(revision), markId: revision.result?.marks[0]?.id, reason: "By hand." };
  const calculation = { fileId: file.id, digest: file.digest };
  return everyone.engineer.post(`${room.path}/dispositions`, { ...body, calculation });
}
const confirm = (values: string[]) =>
  everyone.engineer.post(`${room.path}/confirmations`, { id: randomUUID(), values, against: "ISO 1496-1:2013, 5.2" });
const issue = (revision: Revision, given = password) =>
  everyone.engineer.post(`${room.path}/seal-issues`, {
    issue: { id: randomUUID(), ...boundTo(revision) },
    password: given,
  });

describe("a check by a second engineer", () => {
  const newCheck = (revision: Revision, more: Partial<NewCheck> = {}): NewCheck => ({
    ...{ id: randomUUID(), ...boundTo(revision), outcome: "agrees", text: "Loads and path by hand.", points: [] },
    ...more,
  });
  const check = (by: Browser, body: NewCheck) => by.post(`${room.path}/checks`, body);

  it("is bound to the newest revision and its result, and stands until that changes", async () => {
    const revision = await room.send([place(1)]);
    expectProblem(await check(everyone.engineer, newCheck(revision)), "role-refused");
    const wrong = newCheck(revision, { resultDigest: "0".repeat(64) });
    expectProblem(await check(everyone.checker, wrong), "digest-mismatch");
    const body = newCheck(revision);
    const made = CheckNow.parse((await check(everyone.checker, body).expect(201)).body);
    expect((await check(everyone.checker, body).expect(201)).body).toEqual(made);
    expect((await seal(everyone.reader)).checks).toMatchObject([
      { check: { number: 1 }, standing: { state: "stands" } },
    ]);
    await room.send([move(1, 1_000_000)]);
    expect((await seal()).checks[0]?.standing).toMatchObject({ state: "stale", changed: { elements: ["g1"] } });
    expectProblem(await check(everyone.checker, newCheck(revision)), "revision-superseded");
  });

  it("leaves points that the engineer meets and the checker alone closes", async () => {
    const revision = await room.send([place(1)]);
    const points = [{ id: randomUUID(), text: "Show the uplift at row K.", owedBy: "engineer" as const }];
    expectProblem(await check(everyone.checker, newCheck(revision, { points })), "body-invalid");
    expectProblem(await check(everyone.checker, newCheck(revision, { outcome: "points open" })), "body-invalid");
    await check(everyone.checker, newCheck(revision, { outcome: "points open", points })).expect(201);
    const at = `${room.path}/conditions/${points[0]?.id}`;
    await everyone.engineer.post(`${at}/met`, { id: randomUUID(), text: "Page 12." }).expect(200);
    expectProblem(await everyone.engineer.post(`${at}/steps`, { id: randomUUID(), step: "closed" }), "closer-refused");
    const closed = await everyone.checker.post(`${at}/steps`, { id: randomUUID(), step: "closed" }).expect(200);
    expect(ConditionNow.parse(closed.body)).toMatchObject({ state: "closed", source: "check", waitsFor: null });
  });

  it("is refused to whoever drew in the project, whatever role they hold now", async () => {
    const revision = await room.send([place(1)]);
    const { connection } = service.owner;
    const data = { projectId: room.projectId, personId: everyone.architect.person.id, role: "checker" };
    await connection.membership.deleteMany({ where: { ...data, role: "architect" } });
    await expect(connection.membership.create({ data })).rejects.toThrow(/CW003/);
    await connection.$executeRaw`alter table "membership" disable trigger user`;
    await connection.membership.create({ data });
    await connection.$executeRaw`alter table "membership" enable trigger user`;
    expectProblem(await check(everyone.architect, newCheck(revision)), "own-work");
  });
});

describe("issuing for seal", () => {
  it("is refused while anything stands in the way, which is told one by one", async () => {
    const revision = await room.send([place(1)], judged);
    const markId = revision.result?.marks[0]?.id;
    expect((await seal()).hindrances).toEqual([
      { why: "mark", markId, verdict: "needs the engineer" },
      { why: "from memory", value: "ISO 1496-1, from memory" },
    ]);
    expectProblem(await issue(revision, "another phrase"), "present-password-wrong");
    expect(expectProblem(await issue(revision), "seal-hindered").detail).toBe("1 of: mark; 1 of: from memory");
    expect((await dispose(revision)).status).toBe(201);
    expect(await whys()).toEqual(["from memory"]);
    await confirm(["ISO 1496-1, from memory"]).expect(201);
    expect(await whys()).toEqual([]);
    const issued = SealIssueNow.parse((await issue(revision).expect(201)).body);
    expect(issued).toMatchObject({ issue: { number: 1, revision: "A", steps: [] }, standing: { state: "stands" } });
    expectProblem(await issue(revision), "already-answered");
  });

  it("is refused while the newest revision is not assessed, and while strength is not judged under all loads", async () => {
    await room.send([place(1)], (answer) => ({ ...judged(answer), scope: "load path only, no strength checked" }));
    expect(await whys()).toContain("strength not judged under all loads");
    await room.draw([move(1, 1_000_000)]);
    await room.sendDraft();
    expect(await whys()).toEqual(["not assessed"]);
  });

  it("is refused while a condition is open", async () => {
    const revision = await room.send([place(1)], judged);
    await dispose(revision);
    await confirm(["ISO 1496-1, from memory"]).expect(201);
    const points = [{ id: randomUUID(), text: "Show the uplift.", owedBy: "engineer" as const }];
    const body = { id: randomUUID(), ...boundTo(revision), outcome: "points open", text: "By hand.", points };
    await everyone.checker.post(`${room.path}/checks`, body).expect(201);
    expect((await seal()).hindrances).toEqual([{ why: "condition open", number: 1 }]);
    expectProblem(await issue(revision), "seal-hindered");
  });

  it("needs a disposition anew when what its mark covers changes upstream, and both are shown", async () => {
    const revision = await room.send([place(1), place(2)], judged);
    const disposed = await dispose(revision);
    expect(disposed.status).toBe(201);
    const [first] = (await seal()).dispositions;
    expect(first).toMatchObject({ stands: true, disposition: { reason: "By hand.", number: 1 } });
    await room.send([move(2, 30_000_000)], judged);
    expect((await seal()).dispositions[0]?.stands).toBe(true);
    await room.send([move(1, 1_000_000)], judged);
    const later = await seal();
    expect(later.dispositions[0]?.stands).toBe(false);
    expect(later.hindrances.map(({ why }) => why)).toContain("mark");
  });

  it("takes a disposition only on a mark that is there, with a calculation that is kept and is that very file", async () => {
    const revision = await room.send([place(1)], judged);
    const file = await keep(pdf("calculation"));
    const body = { id: randomUUID(), ...boundTo(revision), markId: revision.result?.marks[0]?.id, reason: "By hand." };
    const put = (more: object) => everyone.engineer.post(`${room.path}/dispositions`, { ...body, ...more });
    const calculation = { fileId: file.id, digest: file.digest };
    expectProblem(await put({}), "body-invalid");
    expectProblem(await put({ calculation: { ...calculation, fileId: randomUUID() } }), "body-invalid");
    expectProblem(await put({ calculation: { ...calculation, digest: "0".repeat(64) } }), "digest-mismatch");
    expectProblem(await put({ calculation, markId: "overhang:g9" }), "element-unknown");
    await put({ calculation }).expect(201);
  });
});

describe("the sealed copy", () => {
  it("comes back byte for byte, by its digest, as an attachment that nothing runs, to the reader as well", async () => {
    const revision = await room.send([place(1)], judged);
    await dispose(revision);
    await confirm(["ISO 1496-1, from memory"]).expect(201);
    const { id } = SealIssueNow.parse((await issue(revision).expect(201)).body).issue;
    const bytes = pdf("sealed elsewhere");
    const file = await keep(bytes, "Sheets A sealed, Überhang.pdf");
    expect(file).toMatchObject({ digest: sha256(bytes), sizeBytes: bytes.byteLength });
    const copy = { id: randomUUID(), fileId: file.id, digest: file.digest };
    const copies = `${room.path}/seal-issues/${id}/copies`;
    expectProblem(await everyone.engineer.post(copies, { ...copy, digest: "0".repeat(64) }), "digest-mismatch");
    expectProblem(await everyone.architect.post(copies, copy), "role-refused");
    await everyone.engineer.post(copies, copy).expect(200);
    await everyone.engineer.post(copies, copy).expect(200);
    const got = await download(everyone.reader, file.id).expect(200);
    expect(Buffer.compare(got.body, bytes)).toBe(0);
    expect(got.headers).toMatchObject({
      "content-type": "application/pdf",
      "content-disposition": "attachment; filename*=UTF-8''Sheets%20A%20sealed%2C%20%C3%9Cberhang.pdf",
      "x-content-type-options": "nosniff",
      "content-security-policy": "sandbox; default-src 'none'; frame-ancestors 'none'",
    });
    const [{ issue: kept, standing } = { issue: undefined, standing: undefined }] = (await seal(everyone.reader))
      .issues;
    expect(kept?.steps).toMatchObject([{ fileId: file.id, digest: sha256(bytes) }]);
    expect(standing?.state).toBe("stands");
    await room.send([move(1, 1_000_000)], judged);
    expect((await seal(everyone.reader)).issues[0]?.standing.state).toBe("stale");
    const kinds = z.array(RecordEntry).parse((await everyone.reader.get(`${room.path}/record`)).body);
    expect(kinds.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["mark disposed", "values confirmed", "issued for seal", "sealed copy kept"]),
    );
  });

  it("is a PDF by its content, whole, of no more than the largest size, and no other file of the engineer is the reader's", async () => {
    await room.send([place(1)]);
    const id = randomUUID();
    const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]);
    expectProblem(await attach(everyone.engineer, id, png), "file-refused");
    expectProblem(await attach(everyone.engineer, id, Buffer.from("%PDF-1.7\ncut off")), "file-refused");
    const large = Buffer.concat([pdf("large"), Buffer.alloc(largestFileBytes), Buffer.from("%%EOF")]);
    expectProblem(await attach(everyone.engineer, id, large), "body-too-large");
    expectProblem(await everyone.engineer.post(`${room.path}/files/${id}`, { file: "text" }), "media-type");
    expectProblem(await attach(everyone.checker, id, pdf("a")), "role-refused");
    const kept = KeptFile.parse((await attach(everyone.engineer, id, pdf("a")).expect(201)).body);
    expect((await attach(everyone.engineer, id, pdf("a")).expect(201)).body).toEqual(kept);
    expectProblem(await attach(everyone.engineer, id, pdf("b")), "id-reused");
    await download(everyone.owner, id).expect(200);
    expect((await everyone.reader.get(`${room.path}/files/${id}`)).status).toBe(404);
    expectProblem(await everyone.owner.get(`${room.path}/files/${randomUUID()}`), "not-found");
  });

  it.each([
    ["a form cut off", "--x\r\ncontent-disposition: form-data; name=file; filename=a.pdf\r\n\r\n%PDF-"],
    ["no form at all", "%PDF-1.7 %%EOF"],
    ["a field in place of a file", "--x\r\ncontent-disposition: form-data; name=file\r\n\r\n%PDF-\r\n--x--\r\n"],
    ["nothing", ""],
  ])("is not taken from %s, and that is said", async (_what, body) => {
    await room.send([place(1)]);
    const answer = await everyone.engineer
      .post(`${room.path}/files/${randomUUID()}`)
      .set("content-type", "multipart/form-data; boundary=x")
      .send(body);
    expectProblem(answer, "file-refused");
  });

  it("cannot be kept under a digest that is not its own: the table itself refuses it", async () => {
    await room.send([place(1)]);
    const file = await keep(pdf("a"));
    const row = await service.owner.connection.keptFile.findUniqueOrThrow({
      where: { projectId_id: { projectId: room.projectId, id: file.id } },
    });
    const bytes = new Uint8Array(row.bytes);
    bytes[10] = (bytes[10] ?? 0) ^ 1;
    const { author: _author, ...rest } = row;
    const data = { ...rest, id: randomUUID(), bytes, author: file.author };
    await expect(service.owner.connection.keptFile.create({ data })).rejects.toThrow(/kept_file_whole/);
  });
});
