import { spawn } from "node:child_process";
import { mkdirSync, rmSync } from "node:fs";
import path from "node:path";
import { CLONE } from "../../apps/api/start/clone.mjs";
import { say } from "../../apps/api/start/say.mjs";
import { Stopped } from "../../apps/api/start/start-failure.mjs";
import { readTally } from "./read-tally.mjs";

/** Projects of vitest.config.ts, quickest answer first. */
export const SUITES = ["schema", "engine", "rules", "web", "api", "two-process", "lifecycle", "journeys"];

const RESULTS = path.join(CLONE, "test-results");
const LONGEST_SUITE_MS = 12 * 60_000;

/**
 * Runs the suites one after the other, their output shown as it comes.
 * @param {string | undefined} chromium
 * @param {AbortSignal} signal
 * @returns {Promise<import("./run-everything.mjs").Tally[]>}
 */
export async function runSuites(chromium, signal) {
  mkdirSync(RESULTS, { recursive: true });
  const tallies = [];
  for (const name of SUITES) {
    const startMs = performance.now();
    const file = path.join(RESULTS, `${name}.json`);
    rmSync(file, { force: true });
    const ok = await runSuite(name, file, chromium, signal);
    tallies.push({ name, ...readTally(file, ok), seconds: (performance.now() - startMs) / 1000 });
  }
  return tallies;
}

/**
 * @param {string} name
 * @param {string} file
 * @param {string | undefined} chromium
 * @param {AbortSignal} signal
 * @returns {Promise<boolean>}
 */
function runSuite(name, file, chromium, signal) {
  signal.throwIfAborted();
  const words = [
    "node_modules/vitest/vitest.mjs",
    "run",
    "--project",
    name,
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${file}`,
  ];
  const env = { ...process.env, ...(chromium === undefined ? {} : { CHROMIUM_PATH: chromium }) };
  const child = spawn(process.execPath, words, { cwd: CLONE, env, stdio: ["ignore", "inherit", "inherit"] });
  const end = () => child.kill("SIGTERM");
  signal.addEventListener("abort", end);
  const timer = setTimeout(() => {
    say(`The suite ${name} has run for ${LONGEST_SUITE_MS / 60_000} minutes and is ended.`);
    end();
  }, LONGEST_SUITE_MS);
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (code) => {
      clearTimeout(timer);
      signal.removeEventListener("abort", end);
      if (signal.aborted) reject(new Stopped());
      else resolve(code === 0);
    });
  });
}
