import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, rmSync } from "node:fs";
import path from "node:path";
import { CLONE } from "../../apps/api/start/clone.mjs";
import { say } from "../../apps/api/start/say.mjs";
import { Stopped } from "../../apps/api/start/start-failure.mjs";
import { readTally } from "./read-tally.mjs";

/** Projects of vitest.config.ts, longest first: what is short fills the time the long ones leave. */
export const SUITES = ["journeys", "api", "engine", "lifecycle", "two-process", "web", "rules", "schema"];

const RESULTS = path.join(CLONE, "test-results");
const LONGEST_SUITE_MS = 16 * 60_000;

/**
 * Each suite in a process of its own; what it wrote is shown whole once it has ended.
 * @param {string | undefined} chromium
 * @param {AbortSignal} signal
 * @returns {(() => Promise<import("./run-everything.mjs").Tally>)[]}
 */
export function suiteJobs(chromium, signal) {
  mkdirSync(RESULTS, { recursive: true });
  return SUITES.map((name) => async () => {
    const startMs = performance.now();
    const file = path.join(RESULTS, `${name}.json`);
    rmSync(file, { force: true });
    say(`${name} …`);
    const { ok, output } = await runSuite(name, file, chromium, signal);
    say(output.trimEnd());
    return { name, ...readTally(file, ok), seconds: (performance.now() - startMs) / 1000 };
  });
}

/**
 * @param {string} name
 * @param {string} file
 * @param {string | undefined} chromium
 * @param {AbortSignal} signal
 * @returns {Promise<{ ok: boolean, output: string }>}
 */
async function runSuite(name, file, chromium, signal) {
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
  const env = {
    ...process.env,
    SERVICE_UNDER_TEST: "built",
    ...(chromium === undefined ? {} : { CHROMIUM_PATH: chromium }),
  };
  const child = spawn(process.execPath, words, { cwd: CLONE, env, stdio: ["ignore", "pipe", "pipe"] });
  /** @type {Buffer[]} */
  const written = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk) => written.push(chunk));
  const code = await exitCode(child, name, signal);
  if (signal.aborted) throw new Stopped();
  return { ok: code === 0, output: Buffer.concat(written).toString("utf8") };
}

/**
 * Ends the suite where it takes too long or the end was asked for: it stops its database and its services itself.
 * @param {import("node:child_process").ChildProcess} child
 * @param {string} name
 * @param {AbortSignal} signal
 * @returns {Promise<number | null>}
 */
async function exitCode(child, name, signal) {
  const end = () => child.kill("SIGTERM");
  signal.addEventListener("abort", end);
  const timer = setTimeout(() => {
    say(`The suite ${name} has run for ${LONGEST_SUITE_MS / 60_000} minutes and is ended.`);
    end();
  }, LONGEST_SUITE_MS);
  try {
    const [code] = await once(child, "close");
    return code;
  } finally {
    clearTimeout(timer);
    signal.removeEventListener("abort", end);
  }
}
