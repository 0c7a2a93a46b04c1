import { execFile, spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { promisify } from "node:util";
import type { ComposeService } from "./compose-file.ts";
import { freePort } from "./free-port.ts";

/** What stands on this machine for what the compose file names. */
export interface Stage {
  /** Folder that holds what the image holds. */
  folder: string;
  /** Each text of the compose file, and what it is here: addresses, paths. */
  here: readonly (readonly [string, string])[];
}

export interface Started {
  port: number;
  metricsPort: number;
  child: ChildProcess;
  output(): string;
  /** Runs the declared health check in the process's environment. */
  healthy(): Promise<boolean>;
  kill(): Promise<void>;
}

const run = promisify(execFile);

/** Starts a service's command with its environment and nothing else of this process's but the path. */
export async function startService(service: ComposeService, stage: Stage): Promise<Started> {
  const [port, metricsPort] = [await freePort(), await freePort()];
  const env = environmentOf(service, stage, { PORT: String(port), METRICS_PORT: String(metricsPort) });
  const [program = "", ...words] = service.command ?? [];
  const child = spawn(program, words, { cwd: stage.folder, env, stdio: ["ignore", "pipe", "pipe"] });
  let text = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (part: Buffer) => (text += part.toString()));
  const [, check = "", ...checkWords] = service.healthcheck?.test ?? [];
  const healthy = () =>
    run(check, checkWords, { cwd: stage.folder, env }).then(
      () => true,
      () => false,
    );
  const kill = async () => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    child.kill("SIGKILL");
    await once(child, "exit");
  };
  return { port, metricsPort, child, output: () => text, healthy, kill };
}

function environmentOf(service: ComposeService, { here }: Stage, ports: Record<string, string>): NodeJS.ProcessEnv {
  const env: NodeJS.ProcessEnv = { PATH: process.env["PATH"] };
  for (const [name, value] of Object.entries(service.environment))
    env[name] = ports[name] ?? here.reduce((text, [there, on]) => text.replaceAll(there, on), value);
  return env;
}

/** Runs a service that ends by itself; its exit status and what it wrote. */
export async function runToEnd(service: ComposeService, stage: Stage): Promise<{ status: number; output: string }> {
  const started = await startService(service, stage);
  const [status] = (await once(started.child, "close")) as [number];
  return { status, output: started.output() };
}
