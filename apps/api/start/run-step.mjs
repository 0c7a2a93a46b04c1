import { spawn } from "node:child_process";
import { createWriteStream, mkdirSync } from "node:fs";
import path from "node:path";
import { CACHE, CLONE } from "./clone.mjs";
import { processLife } from "./process-life.mjs";
import { Stopped } from "./start-failure.mjs";

const LONGEST_END_MS = 2_000;

/**
 * @typedef {object} Step
 * @property {string} name file name of its log in `.cache`
 * @property {string[]} words program and arguments
 * @property {string} [folder] where it runs, the clone by default
 * @property {NodeJS.ProcessEnv} [env]
 * @property {AbortSignal} signal ends the step
 * @property {(worker: import("./process-life.mjs").ProcessLife) => void} [onWorker] told the process while it can still be noted down
 */

/**
 * Runs a program to its end. Resolves with its exit status and all it wrote, which is also kept in `.cache/<name>.log`.
 * When the signal comes, the program is ended and waited for before Stopped is thrown.
 * @param {Step} step
 * @returns {Promise<{ ok: boolean, output: string, stdout: string }>}
 */
export async function runStep({
  name,
  words: [program = "", ...rest],
  folder = CLONE,
  env = process.env,
  signal,
  onWorker,
}) {
  signal.throwIfAborted();
  const child = spawn(program, rest, { cwd: folder, env, stdio: ["ignore", "pipe", "pipe"] });
  if (child.pid !== undefined) onWorker?.(processLife(child.pid));
  const end = () => endChild(child);
  signal.addEventListener("abort", end);
  const written = collect(child, name);
  try {
    const code = await exitCode(child);
    if (signal.aborted) throw new Stopped();
    return { ok: code === 0, ...written() };
  } finally {
    signal.removeEventListener("abort", end);
  }
}

/**
 * npm finishes what it fetches before it heeds a first SIGTERM, and a hanging network never lets it.
 * @param {import("node:child_process").ChildProcess} child
 */
function endChild(child) {
  child.kill("SIGTERM");
  const kill = setTimeout(() => child.kill("SIGKILL"), LONGEST_END_MS);
  child.once("exit", () => clearTimeout(kill));
}

/**
 * @param {import("node:child_process").ChildProcessByStdio<null, import("node:stream").Readable, import("node:stream").Readable>} child
 * @param {string} name
 */
function collect(child, name) {
  mkdirSync(CACHE, { recursive: true });
  const log = createWriteStream(path.join(CACHE, `${name}.log`));
  log.on("error", () => undefined); // a full disk shows in the step itself; the log is only a convenience
  /** @type {Buffer[]} */
  const all = [];
  /** @type {Buffer[]} */
  const out = [];
  const keep = (/** @type {Buffer} */ chunk) => {
    all.push(chunk);
    log.write(chunk);
  };
  child.stdout.on("data", (chunk) => {
    keep(chunk);
    out.push(chunk);
  });
  child.stderr.on("data", keep);
  child.once("close", () => log.end());
  return () => ({ output: Buffer.concat(all).toString("utf8"), stdout: Buffer.concat(out).toString("utf8") });
}

/**
 * @param {import("node:child_process").ChildProcess} child
 * @returns {Promise<number | null>}
 */
function exitCode(child) {
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  });
}
