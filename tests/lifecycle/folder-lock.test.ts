import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { readLock, takeLock, type FolderLock } from "../../apps/api/start/folder-lock.mjs";
import { processLife } from "../../apps/api/start/process-life.mjs";

const MODULE = path.resolve(import.meta.dirname, "../../apps/api/start/folder-lock.mjs");
const RACERS = 8;

let file: string;

beforeEach(() => {
  file = path.join(mkdtempSync(path.join(os.tmpdir(), "cornerway-lock-")), "start.lock");
});

afterEach(() => rmSync(path.dirname(file), { recursive: true }));

it("a free lock is taken, names its holder, may be read by its owner only, and is gone when released", () => {
  const lock = held();
  expect(readLock(file)?.holder).toEqual(processLife(process.pid));
  expect(statSync(file).mode & 0o777).toBe(0o600);
  lock.release();
  expect(existsSync(file)).toBe(false);
});

it("a lock of a live process is not taken, and tells what its holder noted", () => {
  held().note({ address: "http://127.0.0.1:3000" });
  expect(takeLock(file)).toMatchObject({ heldBy: { address: "http://127.0.0.1:3000", holder: { pid: process.pid } } });
});

it("a lock of a process that is gone is taken over, with its note", () => {
  const { pid } = spawnSync("true");
  const workers = [{ pid: 4_000_000, birth: "1" }];
  writeFileSync(file, JSON.stringify({ holder: { pid, birth: "1" }, workers }));
  expect(held().leftOver?.workers).toEqual(workers);
});

it("a lock whose number now belongs to a later process is taken over", () => {
  writeFileSync(file, JSON.stringify({ holder: { pid: process.pid, birth: "1" }, workers: [] }));
  expect(held().leftOver?.holder.birth).toBe("1");
});

it(`of ${RACERS} processes that find a stale lock at once, one takes it`, async () => {
  writeFileSync(file, JSON.stringify({ holder: { pid: 4_000_000, birth: "1" }, workers: [] }));
  const source = `import(${JSON.stringify(MODULE)}).then(({ takeLock }) => {
    console.log("lock" in takeLock(${JSON.stringify(file)}) ? "taken" : "held"); setTimeout(() => {}, 2_000); });`;
  const racers = Array.from({ length: RACERS }, () =>
    spawn(process.execPath, ["-e", source], { stdio: ["ignore", "pipe", "inherit"] }),
  );
  const answers = await Promise.all(racers.map(async ({ stdout }) => String((await once(stdout, "data"))[0]).trim()));
  for (const racer of racers) racer.kill("SIGKILL");
  expect(answers.filter((answer) => answer === "taken")).toHaveLength(1);
});

function held(): FolderLock {
  const taken = takeLock(file);
  if ("heldBy" in taken) throw new Error("the lock is held");
  return taken.lock;
}
