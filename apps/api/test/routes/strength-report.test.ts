import { assessForRecord } from "@cornerway/engine";
import { CheckWorking, resultDigest, StrengthReport, type Revision } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { readReport, readWorkings } from "../../src/store/proof-rows.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { place } from "../support/sample.ts";
import type { TestService } from "../support/service.ts";

let service: TestService;
let database: Database;
let room: ReviewRoom;
let revision: Revision;
const at = (part: string) => `${room.path}/revisions/${revision.letter}/assessment/${part}`;
const workingAt = (id: string) => `${at("working")}?${new URLSearchParams({ id }).toString()}`;

beforeAll(async () => {
  service = await startReviewService();
  database = openDatabase(service.database.serviceUrl);
  room = await openReviewRoom(service, await signInAll(service));
  revision = await room.sendJudged([place(1)]);
});
afterAll(async () => {
  await database.close();
  await service.close();
});

describe("the assessment of a revision", () => {
  it("holds strength, and its digest is that of what is stored: answer, report and every working", async () => {
    expect(revision.result?.scope).toBe("load path, and strength under gravity loads");
    expect(revision.verdict).toBe("not checked");
    const key = { projectId: room.path.split("/").at(-1) ?? "", letter: "A", attempt: 1 };
    const report = await readReport(database.connection, key);
    const workings = await readWorkings(database.connection, key);
    if (report === null || revision.result === null) throw new Error("it is assessed");
    expect(resultDigest(revision.contentDigest, revision.result, { report, workings })).toBe(revision.resultDigest);
  });

  it("gives its report under a tag, and 304 to whoever holds it", async () => {
    const first = await room.by.engineer.get(at("report")).expect(200);
    const report = StrengthReport.parse(first.body);
    const answer = assessForRecord(revision.scheme);
    expect(answer.accepted && answer.proof.report).toEqual(report);
    await room.by.engineer
      .get(at("report"))
      .set("if-none-match", first.headers["etag"] ?? "")
      .expect(304);
  });

  it("gives each working by its name, under a tag of its own, to everyone who reads revisions", async () => {
    const { results } = StrengthReport.parse((await room.by.reader.get(at("report")).expect(200)).body);
    const checked = results.filter(({ clause }) => clause !== undefined);
    const [one] = checked;
    const other = checked.find(({ part }) => part !== one?.part);
    const first = await room.by.reader.get(workingAt(one?.id ?? "")).expect(200);
    expect(CheckWorking.parse(first.body).utilisation).toBeCloseTo(one?.utilisation ?? NaN, 3);
    const tag = first.headers["etag"] ?? "";
    await room.by.owner
      .get(workingAt(one?.id ?? ""))
      .set("if-none-match", tag)
      .expect(304);
    const second = await room.by.owner
      .get(workingAt(other?.id ?? ""))
      .set("if-none-match", tag)
      .expect(200);
    expect(second.body).not.toEqual(first.body);
  });

  it("has no working under another name, asks for one, and has nothing for a letter that was not sent", async () => {
    expectProblem(await room.by.engineer.get(workingAt("nobody")), "not-found");
    expectProblem(await room.by.engineer.get(at("working")), "body-invalid");
    expectProblem(await room.by.engineer.get(`${room.path}/revisions/Z/assessment/report`), "not-found");
  });

  it("keeps what it holds: neither report nor working is altered or removed by the service", async () => {
    for (const table of ["assessment_report", "assessment_working"]) {
      await expect(database.connection.$executeRawUnsafe(`delete from "${table}"`)).rejects.toThrow();
      await expect(database.connection.$executeRawUnsafe(`update "${table}" set letter = 'B'`)).rejects.toThrow();
    }
  });
});
