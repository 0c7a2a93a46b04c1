import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { CACHE } from "./clone.mjs";
import { endWorkers } from "./end-workers.mjs";
import { takeLock } from "./folder-lock.mjs";
import { say } from "./say.mjs";

/** @typedef {Pick<import("./run-step.mjs").Step, "signal" | "onWorker">} StepControl */

const LOOK_AGAIN_MS = 200;

/**
 * Lets one process at a time install and build in this clone. What a killed start left at work there is ended first: two
 * installations at once would spoil each other.
 * @param {(control: StepControl) => Promise<void>} prepare
 * @param {AbortSignal} signal
 */
export async function prepareClone(prepare, signal) {
  const lock = await lockClone(signal);
  try {
    await endWorkers(lock.leftOver?.workers ?? [], 0);
    await prepare({ signal, onWorker: (worker) => lock.note({ workers: [worker] }) });
  } finally {
    lock.release();
  }
}

/**
 * @param {AbortSignal} signal
 * @returns {Promise<import("./folder-lock.mjs").FolderLock>}
 */
async function lockClone(signal) {
  for (let said = false; ; said = true) {
    const taken = takeLock(path.join(CACHE, "prepare.lock"));
    if ("lock" in taken) return taken.lock;
    if (!said) say(`Waiting for process ${taken.heldBy.holder.pid}, which installs or builds in this clone …`);
    await pause(LOOK_AGAIN_MS);
    signal.throwIfAborted();
  }
}
