import { existsSync, readFileSync } from "node:fs";

/**
 * What vitest's JSON report says of one suite. Beside failed tests, each of these counts as one failure: a file that could
 * not be loaded, a run that ended badly without a failed test, and a suite without any test.
 * @param {string} file
 * @param {boolean} endedWell exit status 0
 */
export function readTally(file, endedWell) {
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(file, "utf8"));
  const passed = report.numPassedTests;
  const skipped = report.numPendingTests + report.numTodoTests;
  const failed = report.numFailedTests + report.testResults.filter(couldNotLoad).length;
  if (failed > 0) return { passed, failed, skipped };
  return { passed, failed: endedWell && passed > 0 ? 0 : 1, skipped };
}

/** @param {{ status: string, assertionResults: unknown[] }} result */
function couldNotLoad({ status, assertionResults }) {
  return status === "failed" && assertionResults.length === 0;
}
