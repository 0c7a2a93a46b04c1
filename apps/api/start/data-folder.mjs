import { createHash } from "node:crypto";
import { chmodSync, mkdirSync, statSync } from "node:fs";
import path from "node:path";

/**
 * Where everything a user keeps lies: `.data` in the clone, or where CORNERWAY_DATA says. Run by root, PostgreSQL works
 * as `nobody`, who may be shut out of the clone: then the data goes to a place of its own that stays the same between
 * starts and never is a temporary folder.
 * @param {string} clone
 * @param {NodeJS.ProcessEnv} environment
 * @returns {{ folder: string, why: string | undefined }} `why` is set where the place is not the usual one
 */
export function chooseDataFolder(clone, environment) {
  const chosen = environment["CORNERWAY_DATA"];
  if (chosen) return { folder: path.resolve(chosen), why: "CORNERWAY_DATA says so" };
  if (process.getuid?.() !== 0 || openToOthers(clone)) return { folder: path.join(clone, ".data"), why: undefined };
  const mark = createHash("sha256").update(clone).digest("hex").slice(0, 12);
  return {
    folder: `/var/lib/cornerway-${mark}`,
    why: "the account `nobody`, under which PostgreSQL runs for root, cannot enter this clone",
  };
}

/**
 * Makes the folder where it is missing; it stays open to others whatever the umask, and what is secret inside is closed by itself.
 * @param {string} folder
 */
export function makeDataFolder(folder) {
  const made = mkdirSync(folder, { recursive: true });
  if (made !== undefined && process.getuid?.() === 0) chmodSync(folder, 0o755);
}

/** @param {string} folder */
function openToOthers(folder) {
  const OTHERS_ENTER = 0o001;
  for (let place = folder; ; place = path.dirname(place)) {
    if ((statSync(place).mode & OTHERS_ENTER) === 0) return false;
    if (place === path.dirname(place)) return true;
  }
}
