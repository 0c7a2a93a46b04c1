import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { CLONE } from "../../apps/api/start/clone.mjs";
import { readTally } from "../runner/read-tally.mjs";
import { summaryLines } from "../runner/summary.mjs";

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-tally-"));
});

afterEach(() => rmSync(folder, { recursive: true }));

const REPORT = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [] };
const UNLOADED = {
  name: path.join(CLONE, "tests/a.test.ts"),
  status: "failed",
  message: "no such module",
  assertionResults: [],
};
const HALF = {
  name: path.join(CLONE, "tests/b.test.ts"),
  status: "failed",
  message: "",
  assertionResults: [
    { status: "passed", fullName: "it stands", failureMessages: [] },
    { status: "failed", fullName: "it falls", failureMessages: ["\u001b[31mexpected 1\u001b[39m\nto be 2"] },
  ],
};

it("readTally takes the counts of a suite that ended well", () => {
  expect(tally({ ...REPORT, numPendingTests: 1, numTodoTests: 1 }, true)).toEqual({
    passed: 3,
    failed: 0,
    skipped: 2,
    failures: [],
  });
});

it("readTally counts and names failed tests and files that could not be loaded", () => {
  expect(tally({ ...REPORT, numFailedTests: 1, testResults: [UNLOADED, HALF] }, false)).toEqual({
    passed: 3,
    failed: 2,
    skipped: 0,
    failures: [
      "tests/a.test.ts could not be loaded: no such module",
      "tests/b.test.ts > it falls: expected 1\n    to be 2",
    ],
  });
});

it("readTally counts a suite without a test as failed", () => {
  expect(tally({ ...REPORT, numPassedTests: 0 }, true)).toEqual({
    passed: 0,
    failed: 1,
    skipped: 0,
    failures: ["the suite has no test"],
  });
});

it("readTally counts a suite that ended badly without a failed test as failed", () => {
  expect(tally(REPORT, false)).toEqual({ passed: 3, failed: 1, skipped: 0, failures: ["the run ended badly"] });
});

it("readTally counts a suite that left no report as failed", () => {
  expect(readTally(path.join(folder, "nothing.json"), true)).toEqual({
    passed: 0,
    failed: 1,
    skipped: 0,
    failures: ["the suite left no report"],
  });
});

it("the last line of the summary is the sum alone", () => {
  const part = { skipped: 0, seconds: 1 };
  const lines = summaryLines([
    { name: "lint", passed: 0, failed: 1, ...part },
    { name: "engine", passed: 40, failed: 2, ...part, failures: ["a.test.ts > it falls: because"] },
  ]);
  expect(lines.slice(-3)).toEqual(["FAILED engine: a.test.ts > it falls: because", "", "40 passed, 3 failed"]);
  expect(lines.at(-1)).toBe("40 passed, 3 failed");
});

function tally(report: unknown, endedWell: boolean): ReturnType<typeof readTally> {
  const file = path.join(folder, "report.json");
  writeFileSync(file, JSON.stringify(report));
  return readTally(file, endedWell);
}
