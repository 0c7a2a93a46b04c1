// `npm run bench`: runs every file of packages/engine/bench and apps/api/bench, each of which prints its own medians.
import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import { CLONE } from "./clone.mjs";
import { ensureInstalled } from "./install.mjs";
import { prepareClone } from "./prepare-clone.mjs";
import { runCommand } from "./run-command.mjs";
import { runStep } from "./run-step.mjs";
import { say } from "./say.mjs";
import { StartFailure } from "./start-failure.mjs";

const FOLDERS = ["packages/engine/bench", "apps/api/bench"];

await runCommand(async (signal) => {
  await prepareClone(ensureInstalled, signal);
  const files = FOLDERS.flatMap(benchFiles);
  if (files.length === 0) throw new StartFailure(`There is no bench in ${FOLDERS.join(" or ")}.`);
  const failed = [];
  for (const file of files) if (!(await runBench(file, signal))) failed.push(file);
  if (failed.length > 0) throw new StartFailure(`Over budget or broken: ${failed.join(", ")}`);
});

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
