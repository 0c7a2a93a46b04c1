import { existsSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { DatabaseTrouble } from "./database-trouble.ts";
import { commandWords, processState, type ProcessState } from "./process-state.ts";

const LONGEST_END_MS = 60_000;
const LONGEST_REAP_MS = 3_000;
const LOOK_AGAIN_MS = 50;

/** Ends a PostgreSQL that an earlier, killed start left running on the cluster, so that the next one can open it. */
export async function endLeftOverServer(cluster: string): Promise<void> {
  const pidFile = path.join(cluster, "postmaster.pid");
  if (!existsSync(pidFile)) return;
  const pid = Number(readFileSync(pidFile, "utf8").split("\n")[0]);
  if (processState(pid) === "running") {
    if (!serves(pid, cluster)) return rmSync(pidFile, { force: true }); // the number went to another process meanwhile
    process.kill(pid, "SIGINT"); // fast shutdown: open transactions are rolled back, committed ones are written out
    if ((await waitWhile(pid, "running", LONGEST_END_MS)) === "running")
      throw new DatabaseTrouble("did-not-start", `process ${pid} holds ${cluster}`);
  }
  // A killed process that nothing has reaped still looks alive to PostgreSQL, which would refuse to start.
  if ((await waitWhile(pid, "ended", LONGEST_REAP_MS)) === "ended") rmSync(pidFile, { force: true });
}

function serves(pid: number, cluster: string): boolean {
  const words = commandWords(pid);
  return words.length === 0 || words.includes(cluster);
}

async function waitWhile(pid: number, state: ProcessState, longestMs: number): Promise<ProcessState> {
  for (let waitedMs = 0; processState(pid) === state && waitedMs < longestMs; waitedMs += LOOK_AGAIN_MS)
    await pause(LOOK_AGAIN_MS);
  return processState(pid);
}
