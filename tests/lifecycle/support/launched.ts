import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { setTimeout as pause } from "node:timers/promises";

/** A service started from the outside, as a user would, at the head of a process group of its own. */
export interface Launched {
  child: ChildProcess;
  /** Resolves with the address once it is printed; rejects with the output if the process ends before. */
  address: Promise<string>;
  output(): string;
  /** Exit status once the process and its output have ended. */
  ended: Promise<number | null>;
  /** What Ctrl-C does: the signal reaches every process of the foreground group. */
  signalGroup(signal: NodeJS.Signals): void;
}

const LONGEST_START_MS = 120_000;

export function launch(words: string[], folder: string, env: NodeJS.ProcessEnv): Launched {
  const [program = "", ...rest] = words;
  const child = spawn(program, rest, {
    cwd: folder,
    env: withoutNpm(env),
    detached: true,
    stdio: ["ignore", "pipe", "pipe"],
  });
  let text = "";
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (chunk: Buffer) => (text += chunk.toString("utf8")));
  const ended = once(child, "close").then(([code]: (number | null)[]) => code ?? null);
  const address = waitForAddress(() => text, child);
  address.catch(() => undefined); // a test that expects the start to fail never asks for it
  return {
    child,
    address,
    output: () => text,
    ended,
    signalGroup: (signal) => process.kill(-(child.pid ?? 0), signal),
  };
}

async function waitForAddress(output: () => string, child: ChildProcess): Promise<string> {
  for (const startMs = performance.now(); performance.now() - startMs < LONGEST_START_MS; await pause(20)) {
    const address = /Cornerway is at (\S+)[^]*Ctrl-C ends it/.exec(output())?.[1];
    if (address !== undefined) return address;
    if (child.exitCode !== null || child.signalCode !== null) break;
  }
  throw new Error(`no address was printed:\n${output()}`);
}

/** The tests may themselves run under npm; the service must find only what its own npm sets. */
function withoutNpm(env: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const outside = Object.entries(process.env).filter(
    ([name]) => !/^(npm_|VITEST|NODE_ENV$|DATABASE_URL$|PORT$)/.test(name),
  );
  return { ...Object.fromEntries(outside), ...env };
}
