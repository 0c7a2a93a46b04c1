import { setTimeout as pause } from "node:timers/promises";
import { isAlive } from "./process-life.mjs";

const LOOK_AGAIN_MS = 50;

/**
 * Waits for processes that a killed start left behind and that are about to end by themselves; kills those that do not.
 * @param {import("./process-life.mjs").ProcessLife[]} workers
 * @param {number} patienceMs
 */
export async function endWorkers(workers, patienceMs) {
  for (let waitedMs = 0; workers.some(isAlive) && waitedMs < patienceMs; waitedMs += LOOK_AGAIN_MS)
    await pause(LOOK_AGAIN_MS);
  for (const worker of workers.filter(isAlive)) process.kill(worker.pid, "SIGKILL");
  while (workers.some(isAlive)) await pause(LOOK_AGAIN_MS);
}
