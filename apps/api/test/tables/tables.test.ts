import { randomUUID } from "node:crypto";
import { cautions, emptyScheme, revisionTables, type Scheme } from "@cornerway/schema";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectProblem } from "../support/expect-problem.ts";
import { heldUnit } from "../support/held-unit.ts";
import { openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { place, post } from "../support/sample.ts";
import { password, type TestService } from "../support/service.ts";

let service: TestService;
let room: ReviewRoom;

type Rows = Record<string, string>[];

/** The cautions and the revision stand in the first column alone, after the rows. */
async function table(name: string, letter: string): Promise<{ rows: Rows; told: string[]; text: string }> {
  const { text, headers } = await room.by.owner.get(`${room.path}/revisions/${letter}/tables/${name}`).expect(200);
  expect(headers["content-type"]).toBe("text/csv; charset=utf-8; header=present");
  expect(headers["content-disposition"]).toBe(`attachment; filename="${name}-${letter}.csv"`);
  const all = parse<Record<string, string>>(text, { columns: true });
  const cut = all.length - cautions.length - 1;
  return { text, rows: all.slice(0, cut), told: all.slice(cut).map((row) => Object.values(row)[0] ?? "") };
}

beforeAll(async () => {
  service = await startReviewService();
  room = await openReviewRoom(service, await signInAll(service));
  const { containers, pads, locks, loads, basis }: Scheme = { ...emptyScheme, ...heldUnit() };
  await room.sendJudged([
    ...containers.map((container) => ({ kind: "container.place" as const, container })),
    ...pads.map((pad) => ({ kind: "pad.set" as const, pad })),
    ...locks.map((lock) => ({ kind: "lock.set" as const, lock })),
    ...loads.map((load) => ({ kind: "load.put" as const, load })),
    { kind: "basis.change", basis },
    { kind: "post.set", post: post(1) },
    {
      kind: "opening.cut",
      opening: {
        ...{ id: "d1", tag: "D1", containerId: "g1", face: "right", use: "door", framed: true },
        ...{ offsetUm: 2_000_000, sillUm: 180_000, widthUm: 1_000_000, heightUm: 2_100_000 },
      },
    },
  ]);
});
afterAll(() => service.close());

describe("the tables of a revision", () => {
  it.each(revisionTables)(
    "%s is RFC 4180, with units in its head, the revision and every caution after its rows",
    async (name) => {
      const { text, told } = await table(name, "A");
      expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
      expect(told[0]).toMatch(/^Revision A, content [0-9a-f]{64}, engine \d/);
      expect(told.slice(1)).toEqual([...cautions]);
    },
  );

  it("say where each container stands, in mm", async () => {
    const { rows } = await table("units", "A");
    expect(rows).toMatchObject([{ unit_id: "g1", tag: "G1", size_type: "1CC", x_mm: "0", y_mm: "0", turn_deg: "0" }]);
    expect(rows[0]?.["iso6346"]).toBe(""); // nothing is surveyed
  });

  it("close: what the ground gives back is the sum of what acts, by hand from the rows", async () => {
    const { rows } = await table("reactions", "A");
    const revision = await room.read("A");
    const pads = rows.filter((row) => row["case"]?.startsWith("D + L"));
    const sum = pads.reduce((total, row) => total + Number(row["Fz_kN"]), 0);
    expect(pads).toHaveLength(4);
    expect(sum).toBeCloseTo(revision.result?.statics.loadKn ?? 0, 6);
  });

  it("give reactions of each case as solved, which close with what acts, the static ones after them", async () => {
    const { rows } = await table("reactions", "A");
    const given = rows.filter((row) => row["case"] === "L (L everywhere), as solved, unfactored");
    const acting = rows.find((row) => row["case"] === "L (L everywhere), what acts, reversed");
    expect(given).toHaveLength(4);
    for (const axis of ["Fx_kN", "Fy_kN", "Fz_kN"]) {
      const sum = given.reduce((total, row) => total + Number(row[axis]), 0);
      expect(sum, axis).toBeCloseTo(Number(acting?.[axis]), 2);
    }
    const first = rows.findIndex((row) => row["case"]?.includes("by statics"));
    expect(rows.findLastIndex((row) => row["case"]?.includes("as solved"))).toBeLessThan(first);
  });

  it("give of each check what its working gives: demand over capacity is its ratio", async () => {
    const { rows } = await table("checks", "A");
    expect(rows.length).toBeGreaterThan(10);
    const revision = await room.read("A");
    for (const row of rows) {
      expect(row["content_digest"]).toBe(revision.contentDigest);
      if (row["demand"] === "" || row["capacity"] === "" || row["ratio"] === "") continue;
      expect(Number(row["demand"]) / Number(row["capacity"]), row["check_id"]).toBeCloseTo(Number(row["ratio"]), 3);
    }
  });

  it("list steel that is added with its length: a post from 0 to 2.4 m is 2400 mm", async () => {
    const { rows } = await table("members", "A");
    expect(rows).toMatchObject([
      { member_id: "p1", family: "post", section: "HSS 4x4x1/4", status: "NEW", length_mm: "2400" },
    ]);
  });

  it("say where to cut, so that along the face and up it the sizes add up to the container's: 6058 and 2591 mm, ISO 668", async () => {
    const { rows } = await table("cut-plan", "A");
    // 6058 − 2000 − 1000 and 2591 − 180 − 2100.
    expect(rows).toMatchObject([
      {
        ...{ unit_id: "g1", tag: "D1", face: "right", from_fitting_mm: "2000", width_mm: "1000", cut: "in the yard" },
        ...{ to_far_fitting_mm: "3058", face_length_mm: "6058", above_mm: "311", face_height_mm: "2591" },
      },
    ]);
    expect(Number(rows[0]?.["clear_to_rail_mm"])).toBeLessThan(180);
  });

  it("list what is looked at on site and what comes after the set, as far as anybody has said", async () => {
    const inspections = (await table("inspections", "A")).rows;
    expect(inspections.map((row) => row["item_id"])).toEqual(expect.arrayContaining(["post:p1", "framing:d1"]));
    expect(new Set(inspections.map((row) => row["state"]))).toEqual(new Set(["open"]));
    const deferred = (await table("deferred", "A")).rows;
    expect(deferred.map((row) => row["item"])).toContain("Sections of the framing of D1");
    expect(deferred.find((row) => row["item"] === "Survey of each container")?.["state"]).toBe("none is accepted yet");
    expect((await table("survey", "A")).rows).toEqual([]);
  });

  it("log what went out and what came back with the digest it was of, prices and drafts aside; a formula in a remark is text", async () => {
    const { contentDigest, resultDigest } = await room.read("A");
    const body = { id: randomUUID(), form: "lines", text: "1. =HYPERLINK(1)" };
    await room.by.architect.post(`${room.path}/plan-check`, body).expect(201);
    const stamp = { id: randomUUID(), revision: "A", contentDigest, resultDigest, disposition: "Rejected" };
    await room.by.engineer.post(`${room.path}/stamps`, { stamp: { ...stamp, text: "=1+1" }, password }).expect(201);
    const { rows, text } = await table("submittals", "A");
    expect(rows).toMatchObject([
      { submittal: "revision sent", revision: "A", digest: contentDigest, role: "architect" },
      { submittal: "checked by the engine", revision: "A", digest: resultDigest },
      { submittal: "comments of the authority", outcome: "1 came in" },
      { submittal: "stamp", outcome: "Rejected", digest: resultDigest, remark: "'=1+1", role: "engineer" },
    ]);
    expect(text).not.toMatch(/(^|,)"?=/m);
  });

  it("are read by a reader as well, who is told of no survey, and are not there before the answer is", async () => {
    const units = await room.by.reader.get(`${room.path}/revisions/A/tables/units`).expect(200);
    expect(units.text).toContain("g1");
    await room.draw([place(2)]);
    const letter = await room.sendDraft();
    expectProblem(await room.by.owner.get(`${room.path}/revisions/${letter}/tables/units`), "assessment-pending");
    expectProblem(await room.by.owner.get(`${room.path}/revisions/Q/tables/units`), "not-found");
    expectProblem(await room.by.owner.get(`${room.path}/revisions/A/tables/secrets`), "body-invalid");
  });
});
