import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { readTally } from "../runner/read-tally.mjs";
import { summaryLines } from "../runner/summary.mjs";

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-tally-"));
});

afterEach(() => rmSync(folder, { recursive: true }));

const REPORT = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [] };
const UNLOADED = { status: "failed", assertionResults: [] };

it("readTally takes the counts of a suite that ended well", () => {
  expect(tally({ ...REPORT, numPendingTests: 1, numTodoTests: 1 }, true)).toEqual({ passed: 3, failed: 0, skipped: 2 });
});

it("readTally counts failed tests and files that could not be loaded", () => {
  expect(tally({ ...REPORT, numFailedTests: 2, testResults: [UNLOADED] }, false)).toEqual({
    passed: 3,
    failed: 3,
    skipped: 0,
  });
});

it("readTally counts a suite without a test as failed", () => {
  expect(tally({ ...REPORT, numPassedTests: 0 }, true)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});

it("readTally counts a suite that ended badly without a failed test as failed", () => {
  expect(tally(REPORT, false)).toEqual({ passed: 3, failed: 1, skipped: 0 });
});

it("readTally counts a suite that left no report as failed", () => {
  expect(readTally(path.join(folder, "nothing.json"), true)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});

it("the last line of the summary is the sum alone", () => {
  const part = { skipped: 0, seconds: 1 };
  const lines = summaryLines([
    { name: "lint", passed: 0, failed: 1, ...part },
    { name: "engine", passed: 40, failed: 2, ...part },
  ]);
  expect(lines.at(-1)).toBe("40 passed, 3 failed");
});

function tally(report: unknown, endedWell: boolean): ReturnType<typeof readTally> {
  const file = path.join(folder, "report.json");
  writeFileSync(file, JSON.stringify(report));
  return readTally(file, endedWell);
}
