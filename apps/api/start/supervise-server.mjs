import { spawn } from "node:child_process";
import { closeSync, openSync, readFileSync, renameSync, statSync } from "node:fs";
import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { StartFailure } from "./start-failure.mjs";

const LONGEST_START_MS = 60_000;
const LONGEST_STOP_MS = 20_000;
const LOOK_AGAIN_MS = 50;
const LARGEST_LOG_BYTES = 20_000_000;

/**
 * @typedef {object} ServerPlan
 * @property {string[]} words what node runs: options, entry, arguments
 * @property {NodeJS.ProcessEnv} env
 * @property {string} readyUrl answers 200 once the server serves
 * @property {string} logFile takes what the server writes
 * @property {import("node:stream").Writable | undefined} lifeline keeps the database up until the server has ended
 * @property {(pid: number) => void} onLaunch told the process at once, before it serves
 * @property {(address: string) => void} [onFirstLink] told the link for the first administrator, which is in no log
 *
 * @typedef {object} RunningServer
 * @property {Promise<void>} ended
 * @property {() => string} lastWords what it wrote last
 * @property {() => Promise<void>} stop asks it to end, waits for the requests in flight, and kills it only when it hangs
 */

/**
 * Starts the server in a session of its own and resolves once it serves.
 * @param {ServerPlan} plan
 * @returns {Promise<RunningServer>}
 */
export async function superviseServer({ words, env, readyUrl, logFile, lifeline, onLaunch, onFirstLink }) {
  const child = launch(words, env, logFile, lifeline);
  child.on("message", (message) => {
    const link = firstLinkIn(message);
    if (link !== undefined) onFirstLink?.(link);
  });
  if (child.pid !== undefined) onLaunch(child.pid);
  const ended = new Promise((/** @type {(value: void) => void} */ resolve) => child.once("exit", () => resolve()));
  const hasEnded = () => child.exitCode !== null || child.signalCode !== null;
  const stop = async () => {
    if (!hasEnded()) child.kill("SIGTERM");
    await Promise.race([ended, pause(LONGEST_STOP_MS, undefined, { ref: false })]);
    if (!hasEnded()) child.kill("SIGKILL");
    await ended;
  };
  const lastWords = () => lastLine(logFile);
  if (!(await serves(readyUrl, hasEnded))) {
    await stop();
    throw new StartFailure(`The server did not come up (${lastWords()}): see ${logFile}.`);
  }
  return { ended, lastWords, stop };
}

/**
 * @param {unknown} message
 * @returns {string | undefined}
 */
function firstLinkIn(message) {
  if (typeof message !== "object" || message === null || !("firstLink" in message)) return undefined;
  return typeof message.firstLink === "string" ? message.firstLink : undefined;
}

/**
 * @param {string[]} words
 * @param {NodeJS.ProcessEnv} env
 * @param {string} logFile
 * @param {import("node:stream").Writable | undefined} lifeline
 */
function launch(words, env, logFile, lifeline) {
  if ((statSync(logFile, { throwIfNoEntry: false })?.size ?? 0) > LARGEST_LOG_BYTES)
    renameSync(logFile, `${logFile}.old`);
  const log = openSync(logFile, "a", 0o600);
  const follow = path.join(import.meta.dirname, "follow-launcher.mjs");
  const child = spawn(process.execPath, ["--import", follow, ...words], {
    env,
    detached: true,
    stdio: ["ignore", log, log, "ipc", ...(lifeline === undefined ? [] : [lifeline])],
  });
  closeSync(log);
  return child;
}

/**
 * @param {string} readyUrl
 * @param {() => boolean} hasEnded
 */
async function serves(readyUrl, hasEnded) {
  for (const startMs = performance.now(); performance.now() - startMs < LONGEST_START_MS; await pause(LOOK_AGAIN_MS)) {
    if (hasEnded()) return false;
    if (await answers(readyUrl)) return true;
  }
  return false;
}

/** @param {string} url */
async function answers(url) {
  try {
    return (await fetch(url, { signal: AbortSignal.timeout(5_000) })).ok;
  } catch {
    return false; // not listening yet: asked again until the time is over
  }
}

/** @param {string} logFile */
function lastLine(logFile) {
  const lines = readFileSync(logFile, "utf8").trimEnd().split("\n");
  return (lines.findLast((line) => /error/i.test(line)) ?? lines.at(-1) ?? "no output").trim().slice(0, 300);
}
