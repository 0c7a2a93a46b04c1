import { spawn, type ChildProcess } from "node:child_process";
import net from "node:net";
import path from "node:path";
import type { Writable } from "node:stream";

export interface Guard {
  /** The guard acts once this stream is closed in every process that holds it. */
  lifeline: Writable;
  /** Closes this process's end and waits for the guard to leave. */
  release(): Promise<void>;
}

const GUARD_SCRIPT = path.resolve(import.meta.dirname, "../../start/postgres-guard.mjs");

/**
 * Sets a small process beside the database server that ends it once all who hold the lifeline are gone, however they
 * went: a killed start must leave no server behind. With `removeFolder` it also removes that folder.
 */
export function guardServer(server: ChildProcess, removeFolder?: string): Guard {
  const words = [GUARD_SCRIPT, String(server.pid), ...(removeFolder === undefined ? [] : [removeFolder])];
  const guard = spawn(process.execPath, words, { cwd: "/", detached: true, stdio: ["pipe", "ignore", "ignore"] });
  server.unref();
  guard.unref();
  if (guard.stdin instanceof net.Socket) guard.stdin.unref();
  return { lifeline: guard.stdin, release: () => release(guard) };
}

async function release(guard: ChildProcess): Promise<void> {
  if (guard.exitCode !== null || guard.signalCode !== null) return;
  const gone = new Promise((resolve) => guard.once("exit", resolve));
  guard.ref();
  guard.stdin?.end();
  await gone;
}
