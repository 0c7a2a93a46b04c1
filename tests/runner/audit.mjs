import { execFile } from "node:child_process";
import { CLONE } from "../../apps/api/start/clone.mjs";
import { say } from "../../apps/api/start/say.mjs";
import { Stopped } from "../../apps/api/start/start-failure.mjs";

const LONGEST_MS = 60_000;
const LONGEST_REPORT_BYTES = 64_000_000;
const WORDS = ["audit", "--omit=dev", "--json", "--fetch-retries=0", "--fetch-timeout=20000"];

/**
 * Asks the registry whether what is installed to run has known holes. A hole of high or critical severity that has a mend
 * fails; where the registry cannot be asked, that is said and counted as skipped, never as passed.
 * @param {AbortSignal} signal
 * @returns {Promise<import("./run-everything.mjs").Tally>}
 */
export async function auditDependencies(signal) {
  const startMs = performance.now();
  const told = await askNpm(signal);
  const tally = { name: "audit", passed: 0, failed: 0, skipped: 0, seconds: (performance.now() - startMs) / 1000 };
  if ("why" in told) {
    say(`not audited: ${told.why}`);
    return { ...tally, skipped: 1 };
  }
  for (const line of told.others) say(`audit: ${line}`);
  for (const line of told.grave) say(`audit FAILED: ${line}`);
  return { ...tally, ...(told.grave.length > 0 ? { failed: 1 } : { passed: 1 }) };
}

/**
 * @param {AbortSignal} signal
 * @returns {Promise<ReturnType<typeof readAudit>>}
 */
function askNpm(signal) {
  const options = { cwd: CLONE, timeout: LONGEST_MS, maxBuffer: LONGEST_REPORT_BYTES, signal };
  return new Promise((resolve, reject) => {
    // npm ends with 1 where it found anything: what it wrote counts, unless it was cut off or did not run at all.
    execFile("npm", WORDS, options, (error, stdout) => {
      if (signal.aborted) reject(new Stopped());
      else if (error !== null && (error.killed === true || typeof error.code === "string"))
        resolve({ why: error.message });
      else resolve(readAudit(stdout));
    });
  });
}

/**
 * What an audit says, as `npm audit --json` writes it.
 * @param {string} text
 * @returns {{ why: string } | { grave: string[], others: string[] }}
 */
export function readAudit(text) {
  /** @type {unknown} */
  let report;
  try {
    report = JSON.parse(text);
  } catch {
    return { why: "npm gave no report" };
  }
  if (typeof report !== "object" || report === null) return { why: "npm gave no report" };
  if (!("vulnerabilities" in report) || typeof report.vulnerabilities !== "object" || report.vulnerabilities === null)
    return { why: "message" in report ? String(report.message) : "npm gave no list of holes" };
  /** @type {{ grave: string[], others: string[] }} */
  const found = { grave: [], others: [] };
  for (const [name, hole] of Object.entries(report.vulnerabilities)) {
    const mended = Boolean(hole.fixAvailable);
    const line = `${name} ${hole.range}: ${hole.severity}, ${mended ? "a mend is there" : "no mend yet"}`;
    const grave = mended && ["high", "critical"].includes(hole.severity);
    (grave ? found.grave : found.others).push(line);
  }
  return found;
}
