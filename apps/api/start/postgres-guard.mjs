// Runs beside the embedded database server. Standard input is the lifeline: it ends when the last process that holds
// the other end is gone, by whatever way. Then the server is ended cleanly if it still runs.
import { readFileSync, rmSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";

const LOOK_AGAIN_MS = 50;

const [pidWord, removeFolder] = process.argv.slice(2);
const pid = Number(pidWord);
const born = birth();

for await (const _ of process.stdin);
if (alive()) process.kill(pid, "SIGINT");
while (alive()) await pause(LOOK_AGAIN_MS);
if (removeFolder !== undefined) rmSync(removeFolder, { recursive: true, force: true });

/** A number alone may pass to another process; number and time of birth together do not. */
function alive() {
  try {
    process.kill(pid, 0);
    return birth() === born && state() !== "Z";
  } catch {
    return false;
  }
}

function birth() {
  return statFields()?.[19];
}

function state() {
  return statFields()?.[0];
}

/** Fields of proc(5) from the third on; undefined where the system has no process folder. */
function statFields() {
  try {
    return readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.split(" ");
  } catch {
    return undefined;
  }
}
