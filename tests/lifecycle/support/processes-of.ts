import { readFileSync, readdirSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";

export interface FoundProcess {
  pid: number;
  words: string[];
}

/** Live processes that name the data folder in their words or their environment: launcher, server, database, guard. */
export function processesOf(dataFolder: string): FoundProcess[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name) && Number(name) !== process.pid)
    .filter(
      (pid) => isLive(pid) && (read(pid, "cmdline").includes(dataFolder) || read(pid, "environ").includes(dataFolder)),
    )
    .map((pid) => ({ pid: Number(pid), words: read(pid, "cmdline").split("\0").filter(Boolean) }));
}

/** The processes still there when `longestMs` is over; empty as soon as none is. */
export async function processesLeft(dataFolder: string, longestMs: number): Promise<FoundProcess[]> {
  for (const startMs = performance.now(); performance.now() - startMs < longestMs; await pause(50)) {
    if (processesOf(dataFolder).length === 0) return [];
  }
  return processesOf(dataFolder);
}

function isLive(pid: string): boolean {
  const state = read(pid, "stat").split(") ").at(-1)?.[0];
  return state !== undefined && state !== "Z" && state !== "X";
}

function read(pid: string, file: "cmdline" | "environ" | "stat"): string {
  try {
    return readFileSync(`/proc/${pid}/${file}`, "utf8");
  } catch {
    return ""; // it ended between listing and reading, or belongs to the kernel
  }
}
