/**
 * One line for each part, then what failed, then the sum alone on the last line.
 * @param {import("./run-everything.mjs").Tally[]} tallies
 * @returns {string[]}
 */
export function summaryLines(tallies) {
  const width = Math.max(...tallies.map(({ name }) => name.length));
  const lines = tallies.map(
    ({ name, passed, failed, skipped, seconds }) =>
      `${name.padEnd(width)}  ${cell(passed)} passed  ${cell(failed)} failed${skipped > 0 ? `  ${cell(skipped)} skipped` : ""}  ${seconds.toFixed(1)} s`,
  );
  const failures = tallies.flatMap(({ name, failures = [] }) =>
    failures.map((failure) => `FAILED ${name}: ${failure}`),
  );
  return [
    "",
    ...lines,
    "",
    ...failures,
    ...(failures.length > 0 ? [""] : []),
    `${sum(tallies, "passed")} passed, ${sum(tallies, "failed")} failed`,
  ];
}

/** @param {number} count */
function cell(count) {
  return String(count).padStart(5);
}

/**
 * @param {import("./run-everything.mjs").Tally[]} tallies
 * @param {"passed" | "failed"} key
 */
function sum(tallies, key) {
  return tallies.reduce((total, tally) => total + tally[key], 0);
}
