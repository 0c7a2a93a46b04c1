import { readFileSync } from "node:fs";

/** `ended` is a process that was killed and that nothing has reaped yet: it holds its number but does no more work. */
export type ProcessState = "running" | "ended" | "gone";

/** State of a process by its number; where the system has no process folder, a process that takes a signal is running. */
export function processState(pid: number): ProcessState {
  const letter = stateLetter(pid);
  if (letter !== undefined) return letter === "Z" || letter === "X" ? "ended" : "running";
  return process.platform !== "linux" && takesSignals(pid) ? "running" : "gone";
}

/** The words a process was started with, or none where they cannot be read. */
export function commandWords(pid: number): string[] {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, "utf8").split("\0").filter(Boolean);
  } catch (error) {
    if (isSystemError(error)) return [];
    throw error;
  }
}

function stateLetter(pid: number): string | undefined {
  try {
    // The name in brackets may hold blanks and brackets itself, so the state is what follows the last one: proc(5).
    return readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.[0];
  } catch (error) {
    if (isSystemError(error)) return undefined;
    throw error;
  }
}

function takesSignals(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return isSystemError(error) && error.code === "EPERM";
  }
}

function isSystemError(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && "code" in error;
}
