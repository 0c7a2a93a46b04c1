import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { CACHE, CLONE } from "./clone.mjs";
import { generateWords, generateEnvironment } from "./generate.mjs";
import { runStep } from "./run-step.mjs";
import { saying } from "./say.mjs";
import { sourceDigest } from "./source-digest.mjs";
import { StartFailure } from "./start-failure.mjs";

const STAMP = path.join(CACHE, "built");
const RESULTS = ["apps/api/dist/server.js", "apps/web/dist/index.html"].map((place) => path.join(CLONE, place));

/**
 * Builds API and web unless the sources are as they were at the last whole build and its results are there.
 * @param {Pick<import("./run-step.mjs").Step, "signal" | "onWorker">} control
 */
export async function ensureBuilt(control) {
  const digest = sourceDigest(CLONE);
  const resultsPresent = RESULTS.every((file) => existsSync(file));
  if (resultsPresent && lastBuilt() === digest) return;
  await saying("Building", async () => {
    await generateClient(control);
    // The compiler goes by its notes, not by what is on disk: where results are missing it must be told to write all.
    await must({
      name: "compile",
      words: [...tool("typescript/bin/tsc"), "-b", ...(resultsPresent ? [] : ["--force"])],
      ...control,
    });
    await must({
      name: "bundle",
      words: [...tool("vite/bin/vite.js"), "build"],
      folder: path.join(CLONE, "apps/web"),
      ...control,
    });
  });
  mkdirSync(CACHE, { recursive: true });
  writeFileSync(STAMP, digest);
}

/**
 * Writes the database client, which the type check needs as much as the build.
 * @param {Pick<import("./run-step.mjs").Step, "signal" | "onWorker">} control
 */
export async function generateClient(control) {
  await must({ name: "generate", words: generateWords(), env: generateEnvironment(process.env), ...control });
}

function lastBuilt() {
  return existsSync(STAMP) ? readFileSync(STAMP, "utf8") : undefined;
}

/** @param {import("./run-step.mjs").Step} step */
async function must(step) {
  const { ok, output } = await runStep(step);
  if (ok) return;
  if (/ENOSPC|EDQUOT|no space left/i.test(output))
    throw new StartFailure("The disk is full: free some space and start again.");
  throw new StartFailure(`The build stopped at "${step.name}" (${firstError(output)}): see .cache/${step.name}.log.`);
}

/** @param {string} output */
function firstError(output) {
  const lines = output.split("\n").filter((line) => line.trim() !== "");
  // A heading ends with a colon; a line of a trace begins with "at".
  const reason = lines.find((line) => /error\b.*\S/i.test(line) && !/^\s*at |:\s*$/.test(line));
  return (reason ?? lines.at(-1) ?? "no output").trim();
}

/**
 * Called by path, not through npx, which would look for the network where a package is missing.
 * @param {string} script
 */
function tool(script) {
  return [process.execPath, path.join(CLONE, "node_modules", script)];
}
