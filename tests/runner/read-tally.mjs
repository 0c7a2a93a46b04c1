import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { stripVTControlCharacters } from "node:util";
import { CLONE } from "../../apps/api/start/clone.mjs";

const LINES_OF_A_REASON = 12;

/**
 * What vitest's JSON report says of one suite. Beside failed tests, each of these counts as one failure: a file that could
 * not be loaded, a run that ended badly without a failed test, and a suite without any test.
 * @param {string} file
 * @param {boolean} endedWell exit status 0
 * @returns {{ passed: number, failed: number, skipped: number, failures: string[] }} failures: file, test and reason
 */
export function readTally(file, endedWell) {
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0, failures: ["the suite left no report"] };
  const report = JSON.parse(readFileSync(file, "utf8"));
  const passed = report.numPassedTests;
  const skipped = report.numPendingTests + report.numTodoTests;
  const failed = report.numFailedTests + report.testResults.filter(couldNotLoad).length;
  if (failed > 0) return { passed, failed, skipped, failures: report.testResults.flatMap(failuresOf) };
  if (endedWell && passed > 0) return { passed, failed: 0, skipped, failures: [] };
  return { passed, failed: 1, skipped, failures: [passed > 0 ? "the run ended badly" : "the suite has no test"] };
}

/**
 * What failed in one file, each with the first lines of why.
 * @param {{ name: string, status: string, message: string, assertionResults: { status: string, fullName: string, failureMessages: string[] }[] }} result
 * @returns {string[]}
 */
function failuresOf(result) {
  const file = path.relative(CLONE, result.name);
  if (couldNotLoad(result)) return [`${file} could not be loaded: ${beginning(result.message)}`];
  return result.assertionResults
    .filter(({ status }) => status === "failed")
    .map(({ fullName, failureMessages }) => `${file} > ${fullName}: ${beginning(failureMessages.join("\n"))}`);
}

/** @param {string} text */
function beginning(text) {
  return stripVTControlCharacters(text).split("\n").slice(0, LINES_OF_A_REASON).join("\n    ");
}

/** @param {{ status: string, assertionResults: unknown[] }} result */
function couldNotLoad({ status, assertionResults }) {
  return status === "failed" && assertionResults.length === 0;
}
