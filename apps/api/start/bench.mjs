// `npm run bench`: runs every file of packages/engine/bench and apps/api/bench, each of which prints its own medians.
// `npm run bench -- NAME …`: only those named, also the long ones of tests/soak: load, faults, reads, bad-requests.
import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import { ensureBuilt } from "./build.mjs";
import { CLONE } from "./clone.mjs";
import { ensureInstalled } from "./install.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { runCommand } from "./run-command.mjs";
import { runStep } from "./run-step.mjs";
import { say } from "./say.mjs";
import { StartFailure } from "./start-failure.mjs";

const FOLDERS = ["packages/engine/bench", "apps/api/bench"];
const LONG = "tests/soak";

await runCommand(async (signal) => {
  const files = chosen(process.argv.slice(2));
  await prepareClone(async (control) => {
    await ensureInstalled(control);
    if (files.some((file) => file.startsWith(LONG))) await ensureBuilt(control); // these run the built service
  }, signal);
  const failed = [];
  for (const file of files) if (!(await runBench(file, signal))) failed.push(file);
  if (failed.length > 0) throw new StartFailure(`Over budget or broken: ${failed.join(", ")}`);
});

/**
 * @param {string[]} names
 * @returns {string[]}
 */
function chosen(names) {
  const usual = FOLDERS.flatMap(benchFiles);
  if (names.length === 0) return usual;
  const all = [...usual, ...benchFiles(LONG)];
  return names.map((name) => {
    const file = all.find((one) => path.basename(one, ".ts") === name);
    if (file === undefined)
      throw new StartFailure(
        `There is no bench ${name}: there are ${all.map((one) => path.basename(one, ".ts")).join(", ")}.`,
      );
    return file;
  });
}

/** @param {string} folder */
function benchFiles(folder) {
  const place = path.join(CLONE, folder);
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .map((name) => `${folder}/${name}`);
}

/**
 * @param {string} file
 * @param {AbortSignal} signal
 */
async function runBench(file, signal) {
  say(file);
  const words = [process.execPath, "--conditions=development", "--import", "tsx", file];
  const { ok, output } = await runStep({ name: `bench-${path.basename(file, ".ts")}`, words, signal });
  say(output.trimEnd());
  return ok;
}
