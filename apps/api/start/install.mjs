import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { CLONE } from "./clone.mjs";
import { runStep } from "./run-step.mjs";
import { saying } from "./say.mjs";
import { StartFailure } from "./start-failure.mjs";

/** @typedef {{ version?: string, integrity?: string, optional?: boolean }} LockedPackage */

/**
 * Installs the packages of package-lock.json unless they are all there. Nothing is fetched when they are.
 * @param {Pick<import("./run-step.mjs").Step, "signal" | "onWorker">} control
 */
export async function ensureInstalled(control) {
  if (isInstalled(CLONE)) return;
  const { ok, output } = await saying("Installing packages (first start or changed lock file; a minute or two)", () =>
    runStep({ name: "install", words: [...npm(), ...INSTALL_WORDS], ...control }),
  );
  if (!ok) throw new StartFailure(installFailure(output));
}

// Scripts of packages stay off: none is needed. Development packages are wanted under NODE_ENV=production too, since
// the build needs them. Retries are short, so that a machine without network hears so within seconds.
const INSTALL_WORDS = [
  ..."ci --ignore-scripts --include=dev --include=optional --prefer-offline --no-audit --no-fund".split(" "),
  ..."--fetch-retries=2 --fetch-retry-mintimeout=1000 --fetch-retry-maxtimeout=5000".split(" "),
];

/**
 * npm writes node_modules/.package-lock.json last, when an installation is complete, and `npm ci` removes it first:
 * so an interrupted installation has none.
 * @param {string} clone
 */
export function isInstalled(clone) {
  const wanted = lockedPackages(path.join(clone, "package-lock.json"));
  const present = lockedPackages(path.join(clone, "node_modules/.package-lock.json"));
  return Object.entries(wanted).every(([place, locked]) => {
    // Optional packages are left out where they do not suit the system; the one for this system is asked for when used.
    if (place === "" || locked.optional === true) return true;
    return samePackage(locked, present[place]) && existsSync(path.join(clone, place));
  });
}

/**
 * The one line for a failed `npm ci`.
 * @param {string} output
 */
export function installFailure(output) {
  if (/ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ENETUNREACH|ECONNRESET|ERR_SOCKET_TIMEOUT/.test(output)) {
    return "The package registry cannot be reached, and the first start needs it: connect to the network and start again.";
  }
  if (/ENOSPC|EDQUOT/.test(output))
    return "The disk is full: packages need about 1 GB. Free some space and start again.";
  if (/EACCES|EPERM|EROFS/.test(output))
    return `node_modules cannot be written: give yourself write rights on ${CLONE} and start again.`;
  const reason = output.split("\n").find((line) => /npm error (?!code)/.test(line));
  return `Packages could not be installed (${reason?.replace(/^npm error /, "").trim() ?? "npm gave no reason"}): see .cache/install.log.`;
}

/** @returns {string[]} the words that call npm: the one this start was called by, else the one on the path */
function npm() {
  const called = process.env["npm_execpath"];
  return called !== undefined && /npm-cli\.c?js$/.test(called) ? [process.execPath, called] : ["npm"];
}

/**
 * @param {string} file
 * @returns {Record<string, LockedPackage>}
 */
function lockedPackages(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).packages : {};
}

/**
 * @param {LockedPackage} locked
 * @param {LockedPackage | undefined} present
 */
function samePackage(locked, present) {
  return present !== undefined && present.version === locked.version && present.integrity === locked.integrity;
}
