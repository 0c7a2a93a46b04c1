import { spawn, type ChildProcess } from "node:child_process";
import { closeSync, openSync, readFileSync, statSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import pg from "pg";
import { DatabaseTrouble } from "./database-trouble.ts";
import { programEnvironment, type PostgresPrograms } from "./postgres-programs.ts";
import { postgresTrouble } from "./postgres-trouble.ts";
import type { SystemAccount } from "./system-account.ts";

export interface LaunchPlan {
  cluster: string;
  programs: PostgresPrograms;
  account: SystemAccount;
  durable: boolean;
  logFile: string;
  /** Address to try until it answers. */
  urlAt(port: number): string;
}

export interface LaunchedCluster {
  process: ChildProcess;
  url: string;
}

const MOST_TRIES = 5;
const BETWEEN_TRIES_MS = 500;
const LONGEST_START_MS = 60_000;
const LOOK_AGAIN_MS = 25;
const MOST_CONNECTIONS = 200;

/** Starts PostgreSQL on a free loopback port and returns once it answers queries. */
export async function launchCluster(plan: LaunchPlan): Promise<LaunchedCluster> {
  for (let attempt = 1; ; attempt++) {
    const launched = await tryLaunch(plan);
    if ("url" in launched) return launched;
    if (attempt === MOST_TRIES || !mayPass(launched.output)) throw postgresTrouble(launched.output);
    await pause(BETWEEN_TRIES_MS);
  }
}

async function tryLaunch(plan: LaunchPlan): Promise<LaunchedCluster | { output: string }> {
  const port = await freePort();
  const url = plan.urlAt(port);
  const log = openSync(plan.logFile, "a", 0o600);
  const logStart = statSync(plan.logFile).size;
  // A session of its own: Ctrl-C in the terminal must not end the database before the requests in flight are written.
  const child = spawn(path.join(plan.programs.folder, "bin", "postgres"), serverWords(plan, port), {
    ...plan.account,
    cwd: "/",
    env: programEnvironment(plan.programs),
    stdio: ["ignore", log, log],
    detached: true,
  });
  closeSync(log);
  if (await answers(url, child)) return { process: child, url };
  return { output: readFileSync(plan.logFile).subarray(logStart).toString("utf8") };
}

function serverWords({ cluster, durable }: LaunchPlan, port: number): string[] {
  const settings = {
    listen_addresses: "127.0.0.1",
    unix_socket_directories: "",
    max_connections: MOST_CONNECTIONS,
    fsync: durable ? "on" : "off",
    ...(durable ? {} : { synchronous_commit: "off", full_page_writes: "off" }),
  };
  return [
    "-D",
    cluster,
    "-p",
    String(port),
    ...Object.entries(settings).flatMap(([name, value]) => ["-c", `${name}=${value}`]),
  ];
}

/** True once a query is answered; false once the process has ended. */
async function answers(url: string, child: ChildProcess): Promise<boolean> {
  let failure: Error | undefined;
  child.once("error", (error) => (failure = error));
  for (const startMs = performance.now(); performance.now() - startMs < LONGEST_START_MS; await pause(LOOK_AGAIN_MS)) {
    if (failure !== undefined) throw new DatabaseTrouble("did-not-start", failure.message, failure);
    if (child.exitCode !== null || child.signalCode !== null) return false;
    if (await answersNow(url)) return true;
  }
  child.kill("SIGQUIT");
  throw new DatabaseTrouble("did-not-start", `no answer in ${LONGEST_START_MS / 1000} s`);
}

async function answersNow(url: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: url });
  client.on("error", () => undefined); // the connection may be cut while the server is still coming up; the query reports it
  try {
    await client.connect();
    await client.query("select 1");
    return true;
  } catch {
    return false; // not up yet: the caller asks again until the process ends or the time is over
  } finally {
    await client.end().catch(() => undefined);
  }
}

/** Two causes pass by themselves: another program took the port, or processes of a killed server are still leaving. */
function mayPass(output: string): boolean {
  return /could not bind|Address already in use|shared memory block|lock file "postmaster.pid" already exists/.test(
    output,
  );
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = net.createServer().once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() =>
        address !== null && typeof address === "object" ? resolve(address.port) : reject(new Error("no port")),
      );
    });
  });
}
