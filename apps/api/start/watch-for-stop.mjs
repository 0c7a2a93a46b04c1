import { readFileSync } from "node:fs";
import { parentOf } from "./process-life.mjs";
import { Stopped } from "./start-failure.mjs";

const LOOK_AGAIN_MS = 300;

/**
 * A signal that comes once the service is to end: on SIGINT, SIGTERM or SIGHUP, or when the npm that called it is gone.
 * Later signals change nothing, since Ctrl-C reaches this process twice: from the terminal and again from npm.
 * @param {NodeJS.ProcessEnv} environment
 * @returns {AbortSignal}
 */
export function watchForStop(environment) {
  const control = new AbortController();
  const stop = () => control.abort(new Stopped());
  for (const name of /** @type {const} */ (["SIGINT", "SIGTERM", "SIGHUP"])) process.on(name, stop);
  const callers = environment["npm_lifecycle_event"] === undefined ? [] : callersUpToNpm();
  if (callers.length > 0) setInterval(() => sameCallers(callers) || stop(), LOOK_AGAIN_MS).unref();
  return control.signal;
}

/** Parent, and its parent too where that is only the shell in which npm runs a script. */
function callersUpToNpm() {
  const parent = process.ppid;
  const above = isShell(parent) ? parentOf(parent) : undefined;
  return above === undefined ? [parent] : [parent, above];
}

/** @param {number[]} callers */
function sameCallers([parent = 0, above]) {
  return process.ppid === parent && (above === undefined || parentOf(parent) === above);
}

/** @param {number} pid */
function isShell(pid) {
  try {
    return /\/?(sh|bash|dash|zsh|ash)$/.test(readFileSync(`/proc/${pid}/cmdline`, "utf8").split("\0")[0] ?? "");
  } catch {
    return false; // no process folder on this system: the parent alone is watched
  }
}
