import { spawn, type ChildProcess } from "node:child_process";
import path from "node:path";

export interface ServiceProcess {
  origin: string;
  process: ChildProcess;
  /** What it has written so far. */
  output(): string;
  /** How it ended: the exit code, or the signal's name. */
  ended: Promise<number | string>;
}

const root = path.resolve(import.meta.dirname, "../..");

/** True under `npm test`, which has built the service and tries what it built; a suite by itself runs what the sources say. */
export const ofTheBuilt = process.env["SERVICE_UNDER_TEST"] === "built";

/** One process of the service, or of its worker, on a free port of this machine; resolves when it listens. */
export async function startProcess(
  databaseUrl: string,
  more: Record<string, string> = {},
  entry: "server" | "worker" = "server",
): Promise<ServiceProcess> {
  const env = {
    ...process.env,
    DATABASE_URL: databaseUrl,
    PORT: "0",
    LOG_LEVEL: "error",
    REQUESTS_PER_MINUTE: "1000000",
    ...more,
  };
  const words = ofTheBuilt
    ? [path.join(root, `apps/api/dist/${entry}.js`)]
    : ["--import", "tsx", "--conditions=development", path.join(root, `apps/api/src/${entry}.ts`)];
  const child = spawn(process.execPath, words, { cwd: root, env, stdio: ["ignore", "pipe", "pipe"] });
  const ended = new Promise<number | string>((settle) =>
    child.once("exit", (code, signal) => settle(code ?? String(signal))),
  );
  let written = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (part) => (written += String(part)));
  const output = () => written;
  return { origin: await originOf(child, ended, output), process: child, output, ended };
}

async function originOf(child: ChildProcess, ended: Promise<number | string>, output: () => string): Promise<string> {
  const listening = new Promise<string>((settle) => {
    for (const stream of [child.stdout, child.stderr]) {
      stream?.on("data", () => {
        const origin = /^listening (http:\S+)$/m.exec(output())?.[1];
        if (origin !== undefined) settle(origin);
      });
    }
  });
  const early = ended.then((how) => {
    throw new Error(`the service ended (${how}) before it listened:\n${output()}`);
  });
  return Promise.race([listening, early]);
}
