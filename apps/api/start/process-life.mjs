import { readFileSync } from "node:fs";

/**
 * A process told apart from a later one that gets the same number. `birth` is unknown where the system has no process folder.
 * @typedef {{ pid: number, birth?: string | undefined }} ProcessLife
 */

/**
 * @param {number} pid
 * @returns {ProcessLife}
 */
export function processLife(pid) {
  return { pid, birth: statFields(pid)?.[19] };
}

/**
 * Whether that very process still runs; one that was killed and not reaped does not.
 * @param {ProcessLife} life
 */
export function isAlive({ pid, birth }) {
  if (!exists(pid)) return false;
  const fields = statFields(pid);
  return fields === undefined || (fields[0] !== "Z" && fields[19] === birth);
}

/** @param {number} pid */
export function parentOf(pid) {
  const parent = statFields(pid)?.[1];
  return parent === undefined ? undefined : Number(parent);
}

/** @param {number} pid */
function exists(pid) {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // EPERM: it is there and belongs to someone else.
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/**
 * Fields of proc(5) from the third (state) on; the name before them may hold blanks and brackets.
 * @param {number} pid
 */
function statFields(pid) {
  try {
    return readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.split(" ");
  } catch {
    return undefined; // no such process, or no process folder on this system
  }
}
