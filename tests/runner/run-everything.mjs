import { ensureInstalled } from "../../apps/api/start/install.mjs";
import { prepareBuilt } from "../../apps/api/start/prepare-built.mjs";
import { prepareClone } from "../../apps/api/start/prepare-clone.mjs";
import { runCommand } from "../../apps/api/start/run-command.mjs";
import { say } from "../../apps/api/start/say.mjs";
import { StartFailure } from "../../apps/api/start/start-failure.mjs";
import { atOnce } from "./at-once.mjs";
import { auditDependencies } from "./audit.mjs";
import { checkJobs } from "./checks.mjs";
import { ensureChromium } from "./chromium.mjs";
import { ensurePoppler } from "./poppler.mjs";
import { suiteJobs } from "./suites.mjs";
import { summaryLines } from "./summary.mjs";

/** @typedef {{ name: string, passed: number, failed: number, skipped: number, seconds: number, failures?: string[] }} Tally */

/** A suite leaves much of two cores idle: it waits for its database, its browser, the last of its files. */
const AT_ONCE = 2;

/** The whole of `npm test`, down to the exit status of the process: 0 only when nothing failed. */
export function runEverything() {
  return runCommand(async (signal) => {
    await prepareClone(ensureInstalled, signal);
    await ensurePoppler(signal);
    const chromium = await ensureChromium(signal);
    const built = await build(signal);
    const jobs = [() => auditDependencies(signal), ...checkJobs(signal), ...suiteJobs(chromium, signal)];
    const tallies = [built, ...(await atOnce(AT_ONCE, jobs))];
    for (const line of summaryLines(tallies)) say(line);
    return tallies.some(({ failed }) => failed > 0) ? 1 : 0;
  });
}

/**
 * The suites that run the built service need it, and a tree that does not build has failed already.
 * @param {AbortSignal} signal
 * @returns {Promise<Tally>}
 */
async function build(signal) {
  const startMs = performance.now();
  const tally = (/** @type {number} */ failed) => ({
    name: "build",
    passed: 1 - failed,
    failed,
    skipped: 0,
    seconds: (performance.now() - startMs) / 1000,
  });
  try {
    await prepareClone(prepareBuilt, signal);
    return tally(0);
  } catch (error) {
    if (!(error instanceof StartFailure)) throw error;
    say(error.message);
    return tally(1);
  }
}
