import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { RecordedRun, RunDifference } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { rerunAnswer } from "../../src/cli/rerun-command.ts";
import { runDifference } from "../../src/rerun/run-difference.ts";
import { takeArchive } from "../../src/services/archive/take-archive.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { openReviewRoom, signInAll, type ReviewRoom } from "../support/review-room.ts";
import { place } from "../support/sample.ts";
import { startService, type TestService } from "../support/service.ts";

const secretsKey = "de".repeat(32);
let service: TestService;
let room: ReviewRoom;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-rerun-"));
  service = await startService({ WORKER: "apart", SECRETS_KEY: secretsKey });
  room = await openReviewRoom(service, await signInAll(service));
  await room.sendJudged([place(1)]); // A: answered by this engine
  // B: as an engine of long ago would have answered, which knew no mark of it
  await room.send([place(2)], ({ marks: _marks, ...answer }) => ({ ...answer, engineVersion: "0.1.0", marks: [] }));
});
afterAll(async () => {
  await service?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function archived(): Promise<string> {
  const taken = await takeArchive(service.owner, room.projectId, secretsKey);
  if (!taken.ok) throw new Error(taken.refusal.code);
  const file = path.join(folder, "project.zip");
  writeFileSync(file, taken.value.bytes);
  return file;
}

describe("an old revision on the engine of today", () => {
  it("says the same to the last digit where the engine is the same", async () => {
    const answer = await rerunAnswer([await archived(), "--revision", "A"]);
    expect(answer).toMatchObject({ code: 0, err: "" });
    expect(answer?.out).toContain("as it was sent");
    expect(answer?.out).toContain("the same to the last digit");
  });

  it("says what an older engine did not find, mark by mark, and carries the cautions", async () => {
    const file = await archived();
    const answer = await rerunAnswer([file]);
    expect(answer?.out).toMatch(/^.*revision B$/m);
    expect(answer?.out).toContain("recorded: engine 0.1.0");
    expect(answer?.out).toMatch(/new mark .+: /);
    expect(answer?.out).toContain("preliminary until sealed");
    const told = RunDifference.parse(JSON.parse((await rerunAnswer([file, "--json"]))?.out ?? ""));
    expect(told.same).toBe(false);
    expect(told.appeared.length).toBeGreaterThan(0);
  });

  it("is refused where there is no such revision or no whole archive, and its words are known", async () => {
    expect(await rerunAnswer([await archived(), "--revision", "Z"])).toMatchObject({ code: 1 });
    const broken = path.join(folder, "broken.zip");
    writeFileSync(broken, "PK");
    expect((await rerunAnswer([broken]))?.err).toContain("it is not a whole ZIP");
    for (const words of [[], ["a", "b"], ["a", "--revision"], ["--revision", "A"], ["a", "--fast"]])
      expect(await rerunAnswer(words), words.join(" ")).toBeUndefined();
  });
});

describe("the runs of a revision", () => {
  const runs = async (letter: string) =>
    z
      .array(RecordedRun)
      .parse((await room.by.reader.get(`${room.path}/revisions/${letter}/assessment/runs`).expect(200)).body);

  it("are listed in order, each against the one before it", async () => {
    const before = await runs("B");
    expect(before).toMatchObject([{ attempt: 1, difference: null }]);
    const [first] = await service.owner.connection.assessment.findMany({
      where: { projectId: room.projectId, letter: "A" },
    });
    if (first?.result == null || first.resultDigest === null) throw new Error("A has no answer");
    const { result, resultDigest, verdict, engineVersion, doneAt } = first;
    await service.owner.connection.assessment.create({
      data: {
        projectId: room.projectId,
        letter: "A",
        attempt: 2,
        state: "done",
        ...{ result, resultDigest, verdict, engineVersion, doneAt },
      },
    });
    const [, again] = await runs("A");
    expect(again?.difference).toMatchObject({ same: true, units: [], appeared: [], gone: [], turned: [], heavier: [] });
    expectProblem(await room.by.reader.get(`${room.path}/revisions/Q/assessment/runs`), "not-found");
  });

  it("tell apart a verdict that turned, a mark that went and one that came, and what the scope was", async () => {
    const { result } = await room.read("A");
    if (result === null) throw new Error("A has no answer");
    const [mark, ...rest] = result.marks;
    if (mark === undefined) throw new Error("A has no mark");
    const old = { ...result, marks: [{ ...mark, verdict: "works as built" as const }, ...rest.slice(1)] };
    const told = runDifference({ assessment: old, resultDigest: "a" }, { assessment: result, resultDigest: "b" });
    if (mark.verdict !== "works as built") expect(told.turned.map(({ markId }) => markId)).toContain(mark.id);
    expect(told.appeared.map(({ markId }) => markId)).toEqual(rest.slice(0, 1).map(({ id }) => id));
    const back = runDifference({ assessment: result, resultDigest: "b" }, { assessment: old, resultDigest: "a" });
    expect(back.gone).toEqual(told.appeared);
  });
});
