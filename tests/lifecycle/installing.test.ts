import { once } from "node:events";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { installFailure, isInstalled } from "../../apps/api/start/install.mjs";
import { launch, type Launched } from "./support/launched.ts";
import { processesLeft, processesOf } from "./support/processes-of.ts";
import { scratchClone, type ScratchClone } from "./support/scratch-clone.ts";
import { slowRegistry, type SlowRegistry } from "./support/slow-registry.ts";

let clone: ScratchClone;
let registry: SlowRegistry;

beforeEach(async () => {
  clone = scratchClone();
  registry = await slowRegistry(clone.archive);
});

afterEach(async () => {
  for (const { pid } of processesOf(clone.folder)) process.kill(pid, "SIGKILL");
  await processesLeft(clone.folder, 5_000);
  await registry.close();
  clone.remove();
});

it("Ctrl-C during the installation ends it with status 130 and no process left, and the next start installs", async () => {
  const first = install();
  await registry.asked;
  first.signalGroup("SIGINT");
  expect(await first.ended).toBe(130);
  expect(await processesLeft(clone.folder, 5_000)).toEqual([]);
  await expectInstalled();
});

it("SIGTERM to the start alone ends the installation too", async () => {
  const first = install();
  await registry.asked;
  process.kill(first.child.pid ?? 0, "SIGTERM");
  expect(await first.ended).toBe(130);
  expect(await processesLeft(clone.folder, 5_000)).toEqual([]);
  await expectInstalled();
});

it("a start killed outright leaves its installation at work; the next start ends that one before it installs", async () => {
  const first = install();
  await registry.asked;
  const gone = once(first.child, "exit");
  process.kill(first.child.pid ?? 0, "SIGKILL");
  await gone;
  expect(processesOf(clone.folder)).toHaveLength(1);
  await expectInstalled();
  expect(processesOf(clone.folder)).toEqual([]);
});

it("development packages are installed under NODE_ENV=production, since the build needs them", async () => {
  registry.hurry();
  expect(await install({ NODE_ENV: "production" }).ended).toBe(0);
  expect(existsSync(path.join(clone.folder, "node_modules/one-pad/package.json"))).toBe(true);
});

it("a second start installs nothing and asks no registry", async () => {
  await expectInstalled();
  await registry.close();
  const again = install();
  expect(await again.ended).toBe(0);
  expect(again.output()).toBe("installed\n");
  registry = await slowRegistry(clone.archive);
});

it("a changed lock file is installed anew", async () => {
  await expectInstalled();
  const file = path.join(clone.folder, "package-lock.json");
  writeFileSync(file, readFileSync(file, "utf8").replaceAll("1.0.0", "1.0.1"));
  expect(isInstalled(clone.folder)).toBe(false);
});

it("without a network the first start says so in one line", async () => {
  const start = launch(clone.installWords, clone.folder, {
    ...surroundings(),
    npm_config_registry: "http://127.0.0.1:1/",
  });
  expect(await start.ended).toBe(1);
  expect(start.output().trimEnd().split("\n").at(-1)).toBe(
    "The package registry cannot be reached, and the first start needs it: connect to the network and start again.",
  );
});

// Words of npm 11 for a full disk and for a folder without rights: errno names of POSIX after "npm error code".
it.each([
  [
    "npm error code ENOSPC\nnpm error syscall write",
    "The disk is full: packages need about 1 GB. Free some space and start again.",
  ],
  ["npm error code EACCES\nnpm error syscall mkdir", "node_modules cannot be written"],
  [
    "npm error code EUSAGE\nnpm error lock file is out of step",
    "Packages could not be installed (lock file is out of step)",
  ],
])("installFailure names the cause behind %j", (output, line) => {
  expect(installFailure(output)).toContain(line);
});

function install(env: NodeJS.ProcessEnv = {}): Launched {
  return launch(clone.installWords, clone.folder, { ...surroundings(), npm_config_registry: registry.url, ...env });
}

/** A cache of its own, so that nothing is taken from an earlier installation. */
function surroundings(): NodeJS.ProcessEnv {
  return { npm_config_cache: path.join(clone.folder, "npm-cache"), npm_config_update_notifier: "false" };
}

async function expectInstalled(): Promise<void> {
  registry.hurry();
  const start = install();
  expect(await start.ended, start.output()).toBe(0);
  expect(isInstalled(clone.folder)).toBe(true);
}
