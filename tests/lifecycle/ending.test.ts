import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterEach, beforeEach, expect, it } from "vitest";
import { freePort } from "./support/free-port.ts";
import { launch, type Launched } from "./support/launched.ts";
import { processesLeft, processesOf } from "./support/processes-of.ts";

const START = path.join(import.meta.dirname, "support/start-slow-service.mjs");
const WRITE_MS = 700;
const INTO_THE_WRITE_MS = 200;

let folder: string;
let dataFolder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-life-"));
  chmodSync(folder, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  dataFolder = path.join(folder, "data");
  writeFileSync(path.join(folder, "package.json"), JSON.stringify({ scripts: { start: `node ${START}` } }));
});

afterEach(async () => {
  for (const { pid } of processesOf(dataFolder)) process.kill(pid, "SIGKILL");
  await processesLeft(dataFolder, 5_000);
  rmSync(folder, { recursive: true, force: true });
});

it("Ctrl-C lets the write in flight finish, leaves no process, and the next start has the row", async () => {
  await expectGoodEnd((service) => service.signalGroup("SIGINT"));
});

it("Ctrl-C ends the start itself with status 0", async () => {
  const service = launch(["node", START], folder, { CORNERWAY_DATA: dataFolder, PORT: String(await freePort()) });
  await service.address;
  service.signalGroup("SIGINT");
  expect(await service.ended).toBe(0);
});

it("Ctrl-C before the service is up ends the start with status 130, leaves no process, and the next start goes well", async () => {
  const service = launch(["node", START], folder, { CORNERWAY_DATA: dataFolder });
  while (!service.output().includes("Starting the database")) await pause(10);
  await pause(200); // into the making of the database
  service.signalGroup("SIGINT");
  expect(await service.ended, service.output()).toBe(130);
  expect(await processesLeft(dataFolder, 5_000)).toEqual([]);
  expect(await rowsAfterRestart()).toEqual([]);
});

it("SIGTERM to npm alone does the same", async () => {
  await expectGoodEnd((service) => process.kill(service.child.pid ?? 0, "SIGTERM"));
});

it("npm killed outright does the same: the start notices that its caller is gone", async () => {
  await expectGoodEnd((service) => process.kill(service.child.pid ?? 0, "SIGKILL"));
});

it("a hung-up terminal does the same", async () => {
  await expectGoodEnd((service) => service.signalGroup("SIGHUP"));
});

it("the start killed outright does the same: server and database end by themselves", async () => {
  await expectGoodEnd(() => process.kill(only("start-slow-service"), "SIGKILL"));
});

it("everything but the database killed outright: the next start ends that one, opens the data and has every committed row", async () => {
  const service = await start();
  const address = await service.address;
  await expect(write(address, "before", 0)).resolves.toBe("written");
  for (const { pid, words } of processesOf(dataFolder)) if (!words.includes("-D")) process.kill(pid, "SIGKILL");
  expect(processesOf(dataFolder).filter(({ words }) => words.includes("-D"))).toHaveLength(1);
  expect(await rowsAfterRestart()).toEqual(["before"]);
});

it("the database killed outright ends the start with one line, and the next start has every committed row", async () => {
  const service = await start();
  await write(await service.address, "before", 0);
  process.kill(database(), "SIGKILL");
  await service.ended;
  expect(service.output()).toContain(
    "The database ended by itself: see postgres.log in the data folder and start again.",
  );
  expect(await processesLeft(dataFolder, 5_000)).toEqual([]);
  expect(await rowsAfterRestart()).toEqual(["before"]);
});

it("the server killed outright ends the start with one line and leaves no process", async () => {
  const service = await start();
  await service.address;
  process.kill(only("slow-server"), "SIGKILL");
  await service.ended;
  expect(service.output()).toContain("The server ended by itself");
  expect(await processesLeft(dataFolder, 5_000)).toEqual([]);
});

it("a second start on the same data says where the first one is and leaves it alone", async () => {
  const first = await start();
  const address = await first.address;
  const second = await start();
  await second.ended;
  expect(second.output()).toContain(
    `Cornerway already runs from this clone (at ${address}, process ${only("start-slow-service")})`,
  );
  expect(await write(address, "still", 0)).toBe("written");
});

it("root is told where data must go when PostgreSQL's account cannot enter the chosen folder", async ({ skip }) => {
  skip(process.getuid?.() !== 0, "only root hands PostgreSQL to another account");
  chmodSync(folder, 0o700);
  const service = await start();
  expect(await service.ended).toBe(1);
  expect(service.output()).toContain("set CORNERWAY_DATA to a folder open to others");
});

async function expectGoodEnd(end: (service: Launched) => void): Promise<void> {
  const service = await start();
  const address = await service.address;
  await write(address, "done", 0);
  const inFlight = write(address, "in flight", WRITE_MS);
  await pause(INTO_THE_WRITE_MS);
  end(service);
  expect(await inFlight).toBe("written");
  await service.ended;
  expect(await processesLeft(dataFolder, 10_000)).toEqual([]);
  expect(await rowsAfterRestart()).toEqual(["done", "in flight"]);
}

async function start(): Promise<Launched> {
  return launch(["npm", "start"], folder, { CORNERWAY_DATA: dataFolder, PORT: String(await freePort()) });
}

async function rowsAfterRestart(): Promise<unknown> {
  const service = await start();
  const rows: unknown = await (await fetch(`${await service.address}/rows`)).json();
  service.signalGroup("SIGTERM");
  await service.ended;
  return rows;
}

async function write(address: string, name: string, ms: number): Promise<unknown> {
  return (await fetch(`${address}/write?name=${encodeURIComponent(name)}&ms=${ms}`)).json();
}

function only(word: string): number {
  const found = processesOf(dataFolder).filter(
    ({ words }) => words[0]?.endsWith("node") && words.some((each) => each.includes(word)),
  );
  expect(found).toHaveLength(1);
  return found[0]?.pid ?? 0;
}

function database(): number {
  const found = processesOf(dataFolder).filter(({ words }) => words.includes("-D"));
  expect(found).toHaveLength(1);
  return found[0]?.pid ?? 0;
}
