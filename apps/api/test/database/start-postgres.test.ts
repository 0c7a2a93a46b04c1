import { spawn } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterEach, beforeEach, expect, it } from "vitest";
import { processState } from "../../src/database/process-state.ts";
import { startPostgres, type RunningPostgres } from "../../src/database/index.ts";
import { withClient } from "../../src/database/with-client.ts";

let dataFolder: string;
let running: RunningPostgres[];

beforeEach(() => {
  dataFolder = mkdtempSync(path.join(os.tmpdir(), "cornerway-postgres-"));
  chmodSync(dataFolder, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  running = [];
});

afterEach(async () => {
  for (const server of running) await server.stop();
  rmSync(dataFolder, { recursive: true, force: true });
});

it("a database a user keeps waits for the disk at every commit and asks every sign-in for its password", async () => {
  const { ownerUrl } = await start();
  const { rows } = await withClient(ownerUrl, (client) =>
    client.query(
      `select name, setting from pg_settings where name in ('fsync', 'synchronous_commit', 'full_page_writes') order by name`,
    ),
  );
  expect(rows.map(({ name, setting }) => `${name} ${setting}`)).toEqual([
    "fsync on",
    "full_page_writes on",
    "synchronous_commit on",
  ]);
  const { rows: rules } = await withClient(ownerUrl, (client) =>
    client.query("select distinct auth_method from pg_hba_file_rules"),
  );
  expect(rules).toEqual([{ auth_method: "scram-sha-256" }]);
});

it("passwords lie in files that only their owner may read", async () => {
  await start();
  for (const name of ["owner-password", "service-password"]) {
    const { mode, size } = statSync(path.join(dataFolder, "secrets", name));
    expect(mode & 0o777).toBe(0o600);
    expect(size).toBe(64); // 32 random bytes in hexadecimal
  }
  expect(statSync(path.join(dataFolder, "secrets")).mode & 0o777).toBe(0o700);
});

it("rows are there after stop and start, under the same passwords", async () => {
  const first = await start();
  await withClient(first.ownerUrl, (client) =>
    client.query("create table kept (n integer); insert into kept values (7)"),
  );
  await first.stop();
  const second = await start();
  expect(new URL(second.ownerUrl).password).toBe(new URL(first.ownerUrl).password);
  const { rows } = await withClient(second.ownerUrl, (client) => client.query("select n from kept"));
  expect(rows).toEqual([{ n: 7 }]);
});

it("the server runs in a session of its own, where Ctrl-C does not reach it", async () => {
  await start();
  const session = readFileSync(`/proc/${serverPid()}/stat`, "utf8").split(") ").at(-1)?.split(" ")[3]; // proc(5): field 6
  expect(Number(session)).toBe(serverPid());
});

it("a first start stopped half way leaves nothing that a second one takes for a database", async () => {
  mkdirSync(path.join(dataFolder, "postgres.unfinished"));
  writeFileSync(path.join(dataFolder, "postgres.unfinished/PG_VERSION"), "18\n");
  const { ownerUrl } = await start();
  await expect(withClient(ownerUrl, (client) => client.query("select 1"))).resolves.toMatchObject({ rowCount: 1 });
  expect(existsSync(path.join(dataFolder, "postgres.unfinished"))).toBe(false);
});

it("a server still running from a killed start is ended and the data opened, with every committed row", async () => {
  const first = await start();
  await withClient(first.ownerUrl, (client) =>
    client.query("create table kept (n integer); insert into kept values (7)"),
  );
  const second = await start();
  const { rows } = await withClient(second.ownerUrl, (client) => client.query("select n from kept"));
  expect(rows).toEqual([{ n: 7 }]);
  await first.ended;
});

it("a process file that names some other live process does not stop the start", async () => {
  const first = await start();
  await first.stop();
  writeFileSync(
    path.join(dataFolder, "postgres/postmaster.pid"),
    `${process.pid}\n${dataFolder}/postgres\n0\n5432\n\n127.0.0.1\n0 0\nready\n`,
  );
  await expect(start()).resolves.toHaveProperty("serviceUrl");
});

// at times the shell reaps its child after all: then it is tried again
it("a process file that names a killed process nobody reaped does not stop the start", { retry: 3 }, async () => {
  const first = await start();
  await first.stop();
  // The shell starts a child and becomes another program, which knows of no child and never reaps it; only then it ends.
  const parent = spawn("sh", ["-c", "cat <&3 >&2 & echo $!; exec sh -c 'echo ready; exec sleep 30'"], {
    stdio: ["ignore", "pipe", "ignore", "pipe"],
  });
  let told = "";
  for await (const piece of parent.stdout ?? []) {
    told += String(piece);
    if (told.includes("ready")) break;
  }
  const zombie = Number(told.split("\n")[0]);
  parent.stdio[3]?.destroy();
  while (processState(zombie) === "running") await pause(20);
  expect(processState(zombie)).toBe("ended");
  writeFileSync(
    path.join(dataFolder, "postgres/postmaster.pid"),
    `${zombie}\n${dataFolder}/postgres\n0\n5432\n\n127.0.0.1\n0 0\nready\n`,
  );
  await expect(start()).resolves.toHaveProperty("serviceUrl");
  parent.kill("SIGKILL");
});

it("DATABASE_URL wins: nothing is started, and the service's role there gets a password kept in the data folder", async () => {
  const { ownerUrl } = await start();
  const ownFolder = path.join(dataFolder, "second");
  const used = await startPostgres({ dataFolder: ownFolder, databaseUrl: ownerUrl });
  expect(used).toMatchObject({ ownerUrl, lifeline: undefined });
  expect(existsSync(path.join(ownFolder, "postgres"))).toBe(false);
  const kept = readFileSync(path.join(ownFolder, "secrets/service-password"), "utf8");
  expect(new URL(used.serviceUrl).password).toBe(kept);
  const { rows } = await withClient(used.serviceUrl, (client) => client.query("select current_user as name"));
  expect(rows).toEqual([{ name: "cornerway_service" }]);
});

it("SERVICE_DATABASE_URL wins too: the role's password is left as it is", async () => {
  const { ownerUrl, serviceUrl } = await start();
  const used = await startPostgres({ dataFolder, databaseUrl: ownerUrl, serviceDatabaseUrl: serviceUrl });
  expect(used.serviceUrl).toBe(serviceUrl);
  await expect(withClient(serviceUrl, (client) => client.query("select 1"))).resolves.toMatchObject({ rowCount: 1 });
});

it("a user in DATABASE_URL who may not make roles is told so", async () => {
  const { ownerUrl, serviceUrl } = await start();
  await withClient(ownerUrl, (client) => client.query("create role plain login password 'plain-word'"));
  const plain = new URL(serviceUrl);
  plain.username = "plain";
  plain.password = "plain-word";
  const started = startPostgres({ dataFolder: path.join(dataFolder, "second"), databaseUrl: plain.href });
  await expect(started).rejects.toMatchObject({ code: "role-refused", detail: "cornerway_service" });
});

async function start(): Promise<RunningPostgres> {
  const server = await startPostgres({ dataFolder });
  running.push(server);
  return server;
}

function serverPid(): number {
  return Number(readFileSync(path.join(dataFolder, "postgres/postmaster.pid"), "utf8").split("\n")[0]);
}
