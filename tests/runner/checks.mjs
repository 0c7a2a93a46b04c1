import { readdirSync } from "node:fs";
import path from "node:path";
import { CLONE } from "../../apps/api/start/clone.mjs";
import { runStep } from "../../apps/api/start/run-step.mjs";
import { say } from "../../apps/api/start/say.mjs";
import { atOnce } from "./at-once.mjs";

const SOURCES = [...below("packages"), ...below("apps")].map((folder) => `${folder}/src`);

const node = (/** @type {string[]} */ ...words) => [process.execPath, ...words];
const TSC = "node_modules/typescript/bin/tsc";

/** @type {{ name: string, commands: string[][] }[]} */
const CHECKS = [
  { name: "lint", commands: [node("node_modules/oxlint/bin/oxlint", "--type-aware", ".")] },
  {
    name: "layers",
    commands: [
      node(
        "node_modules/dependency-cruiser/bin/dependency-cruise.mjs",
        "--config",
        ".dependency-cruiser.cjs",
        ...SOURCES,
        "apps/api/start",
      ),
    ],
  },
  { name: "determinism", commands: [node("--import", "tsx", "tests/rules/check-determinism.ts")] },
  { name: "types", commands: [node(TSC, "-b"), node(TSC, "-p", "apps/api/start"), node(TSC, "-p", "tests")] },
];

/**
 * Each check counts as one passed or one failed, and a failed one shows all it says.
 * @param {AbortSignal} signal
 * @returns {(() => Promise<import("./run-everything.mjs").Tally>)[]}
 */
export function checkJobs(signal) {
  return CHECKS.map(({ name, commands }) => async () => {
    const startMs = performance.now();
    const failed = (await allPass(name, commands, signal)) ? 0 : 1;
    return { name, passed: 1 - failed, failed, skipped: 0, seconds: (performance.now() - startMs) / 1000 };
  });
}

/**
 * The checks without the suites.
 * @param {AbortSignal} signal
 */
export const runChecks = (signal) => atOnce(2, checkJobs(signal));

/**
 * @param {string} name
 * @param {string[][]} commands
 * @param {AbortSignal} signal
 */
async function allPass(name, commands, signal) {
  let pass = true;
  for (const words of commands) {
    const { ok, output } = await runStep({ name: `check-${name}`, words, signal });
    if (!ok) say(output.trimEnd());
    pass &&= ok;
  }
  say(`${name}: ${pass ? "passed" : "FAILED"}`);
  return pass;
}

/** @param {string} folder */
function below(folder) {
  return readdirSync(path.join(CLONE, folder)).map((name) => `${folder}/${name}`);
}
