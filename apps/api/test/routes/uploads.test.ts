import { createHash, randomUUID } from "node:crypto";
import { archiveLimits, KeptFile, longestPhotoSidePx, mostKeptBytes } from "@cornerway/schema";
import sharp from "sharp";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { keepFile } from "../../src/services/files/keep-file.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import type { Browser, TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];
let room: ReviewRoom;

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
  room = await openReviewRoom(service, everyone);
});
afterAll(() => service.close());

const attach = (bytes: Buffer, { by = everyone.owner, id = String(randomUUID()), filename = "photo" } = {}) =>
  supertest(service.app.server)
    .post(`${room.path}/files/${id}`)
    .set("cookie", by.cookie)
    .set("csrf-token", by.csrfToken)
    .attach("file", bytes, { filename, contentType: "image/jpeg" });
const keep = async (bytes: Buffer) => KeptFile.parse((await attach(bytes).expect(201)).body);
const download = (by: Browser, id: string) =>
  by
    .get(`${room.path}/files/${id}`)
    .buffer(true)
    .parse((response, done) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("end", () => done(null, Buffer.concat(parts)));
    });
const bytesOf = async (id: string): Promise<Buffer> => {
  const { body }: { body: unknown } = await download(everyone.engineer, id).expect(200);
  if (!Buffer.isBuffer(body)) throw new Error("the answer is no file");
  return body;
};

const plain = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: { r: 90, g: 120, b: 60 } } });
/** Taken with the phone on its side, at a place written in degrees, minutes and seconds: Exif 2.32, sections 4.6.4 and 4.6.6. */
const phonePhoto = () =>
  plain(64, 32)
    .withExif({
      IFD0: { Make: "Handheld", Artist: "Somebody" },
      IFD3: {
        GPSLatitudeRef: "N",
        GPSLatitude: "51/1 30/1 4000/100",
        GPSLongitudeRef: "W",
        GPSLongitude: "0/1 7/1 0/1",
      },
    })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
const mebi = 1024 * 1024;
const start = (bytes: Buffer, count: number) => bytes.subarray(0, count);

describe("a photo", () => {
  it("loses where and with what it was taken, stands upright, and is known by the digest of what is kept", async () => {
    const sent = await phonePhoto();
    // what comes has it, so that its absence says something
    expect(sent.includes("Exif")).toBe(true);
    expect(sent.includes("Handheld")).toBe(true);
    const file = await keep(sent);
    const kept = await bytesOf(file.id);
    for (const trace of ["Exif", "Handheld", "Somebody"]) expect(kept.includes(trace), trace).toBe(false);
    const read = await sharp(kept).metadata();
    expect(read).toMatchObject({ format: "jpeg", width: 32, height: 64 });
    expect([read.exif, read.xmp, read.iptc, read.icc, read.orientation]).toEqual(Array(5).fill(undefined));
    const digest = createHash("sha256").update(kept).digest("hex");
    expect(file).toMatchObject({ digest, mediaType: "image/jpeg", sizeBytes: kept.byteLength });
  });

  it("is sent to be saved, and never shown or run as a page", async () => {
    const file = await keep(await plain(8, 8).png().toBuffer());
    const got = await download(everyone.engineer, file.id).expect(200);
    expect(got.headers).toMatchObject({
      "content-type": "image/png",
      "content-disposition": "attachment; filename*=UTF-8''photo",
      "x-content-type-options": "nosniff",
      "content-security-policy": expect.stringMatching(/^sandbox; default-src 'none'/),
    });
  });

  it("is kept no larger than anybody looks at", async () => {
    const kept = await bytesOf((await keep(await plain(6000, 3000).jpeg().toBuffer())).id);
    expect(await sharp(kept).metadata()).toMatchObject({ width: longestPhotoSidePx, height: longestPhotoSidePx / 2 });
  });

  it("sent again under its id is the same; another under that id is refused", async () => {
    const [id, sent] = [randomUUID(), await phonePhoto()];
    const first = (await attach(sent, { id }).expect(201)).body;
    expect((await attach(sent, { id }).expect(201)).body).toEqual(first);
    expectProblem(await attach(await plain(9, 9).png().toBuffer(), { id }), "id-reused");
  });

  it("drops what hangs on behind it: a page of script, or another file", async () => {
    const script = "<script>alert(1)</script>%PDF-1.7 %%EOF";
    const file = await keep(Buffer.concat([await phonePhoto(), Buffer.from(script)]));
    expect(file.mediaType).toBe("image/jpeg");
    expect((await bytesOf(file.id)).includes("script")).toBe(false);
  });

  it.each<[string, () => Promise<Buffer>]>([
    ["a JPEG cut short", async () => start(await plain(400, 400).jpeg().toBuffer(), 900)],
    ["a PNG cut short", async () => start(await plain(2000, 2000).png().toBuffer(), 300)],
    ["the head of a JPEG and a page behind it", async () => Buffer.from("\xff\xd8\xff\xe0<html><script>", "latin1")],
    ["a PNG of 100 million pixels in few bytes", () => plain(10_000, 10_000).png({ compressionLevel: 9 }).toBuffer()],
    ["a drawing that may hold script", async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    ["a WebP", () => plain(8, 8).webp().toBuffer()],
    ["a GIF", () => plain(8, 8).gif().toBuffer()],
    ["a page", async () => Buffer.from("<!doctype html><title>x</title>")],
    ["nothing", async () => Buffer.alloc(0)],
  ])("is not %s", async (_what, made) => {
    const problem = expectProblem(await attach(await made()), "file-refused");
    expect(problem.fields?.map(({ pointer }) => pointer)).toEqual(["/file"]);
    expect(await service.owner.connection.keptFile.count({ where: { projectId: room.projectId, sizeBytes: 0 } })).toBe(
      0,
    );
  });

  it("is laid by architect, engineer and owner, and by nobody else", async () => {
    const sent = await plain(8, 8).jpeg().toBuffer();
    for (const by of [everyone.architect, everyone.engineer, everyone.owner]) await attach(sent, { by }).expect(201);
    for (const by of [everyone.checker, everyone.reader]) expectProblem(await attach(sent, { by }), "role-refused");
  });
});

it("a project keeps no more files than its archive holds: one beyond is refused, and nothing of it is written", async () => {
  expect(mostKeptBytes).toBeLessThan(archiveLimits.fileBytes);
  const { projectId } = await openReviewRoom(service, everyone);
  const part = { projectId, person: everyone.owner.person, roles: ["owner"] as const };
  const keepIn = (bytes: Buffer, most: number) =>
    keepFile(service.owner, part, { id: randomUUID(), name: "photo.jpg", bytes }, most);
  const photo = await plain(64, 64).jpeg().toBuffer();
  expect((await keepIn(photo, mebi)).ok).toBe(true);
  const files = { where: { projectId } };
  const { sizeBytes } = await service.owner.connection.keptFile.findFirstOrThrow(files);
  expect(await keepIn(photo, 2 * sizeBytes - 1)).toMatchObject({ ok: false, refusal: { code: "file-refused" } });
  expect(await service.owner.connection.keptFile.count(files)).toBe(1);
  expect((await keepIn(photo, 2 * sizeBytes)).ok).toBe(true);
});
