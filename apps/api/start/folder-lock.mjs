import { linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { isAlive, processLife } from "./process-life.mjs";

/**
 * What a lock file says: who holds it, which processes work for the holder, where the service is, and its database.
 * @typedef {{ holder: import("./process-life.mjs").ProcessLife,
 *             workers: import("./process-life.mjs").ProcessLife[],
 *             address?: string, ownerUrl?: string, serviceUrl?: string }} LockNote
 *
 * @typedef {object} FolderLock
 * @property {LockNote | undefined} leftOver note of an earlier holder that was killed; its workers may still run
 * @property {(change: Partial<LockNote>) => void} note
 * @property {() => void} release
 */

/**
 * Takes the lock, or returns the note of the live process that holds it.
 * @param {string} file
 * @returns {{ lock: FolderLock } | { heldBy: LockNote }}
 */
export function takeLock(file) {
  mkdirSync(path.dirname(file), { recursive: true });
  /** @type {LockNote} */
  const own = { holder: processLife(process.pid), workers: [] };
  /** @type {LockNote | undefined} */
  let leftOver;
  while (!createLock(file, own)) {
    const found = readLock(file);
    if (found === undefined) continue; // released between the two steps
    if (isAlive(found.holder)) return { heldBy: found };
    if (removeStale(file, found)) leftOver = found;
  }
  return { lock: heldLock(file, own, leftOver) };
}

/**
 * @param {string} file
 * @returns {LockNote | undefined}
 */
export function readLock(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    if (isMissing(error)) return undefined;
    throw error;
  }
}

/**
 * A hard link appears whole or not at all, and only one process can make it.
 * @param {string} file
 * @param {LockNote} note
 */
function createLock(file, note) {
  const draft = writeDraft(file, note);
  try {
    linkSync(draft, file);
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  } finally {
    rmSync(draft, { force: true });
  }
}

/**
 * Moves the stale lock aside; where another start was quicker and the file is already its own, puts that back.
 * @param {string} file
 * @param {LockNote} stale
 */
function removeStale(file, stale) {
  const aside = `${file}.${process.pid}.stale`;
  try {
    renameSync(file, aside);
  } catch (error) {
    if (isMissing(error)) return false;
    throw error;
  }
  const moved = readLock(aside);
  if (moved?.holder.pid === stale.holder.pid && moved.holder.birth === stale.holder.birth) {
    rmSync(aside);
    return true;
  }
  renameSync(aside, file);
  return false;
}

/**
 * @param {string} file
 * @param {LockNote} own
 * @param {LockNote | undefined} leftOver
 * @returns {FolderLock}
 */
function heldLock(file, own, leftOver) {
  return {
    leftOver,
    note(change) {
      Object.assign(own, change);
      renameSync(writeDraft(file, own), file);
    },
    release: () => rmSync(file, { force: true }),
  };
}

/**
 * Notes may name an address with its password, so only the owner may read them.
 * @param {string} file
 * @param {LockNote} note
 */
function writeDraft(file, note) {
  const draft = `${file}.${process.pid}.draft`;
  writeFileSync(draft, JSON.stringify(note), { mode: 0o600 });
  return draft;
}

/** @param {unknown} error */
function isMissing(error) {
  return error instanceof Error && "code" in error && error.code === "ENOENT";
}
