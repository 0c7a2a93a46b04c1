import { existsSync } from "node:fs";
import path from "node:path";
import { runStep } from "../../apps/api/start/run-step.mjs";
import { say, saying } from "../../apps/api/start/say.mjs";

/** Where one of these programs is, on the path; undefined when none is. */
export function findProgram(/** @type {readonly string[]} */ names) {
  const folders = (process.env["PATH"] ?? "").split(path.delimiter);
  return names.flatMap((name) => folders.map((folder) => path.join(folder, name))).find((file) => existsSync(file));
}

/**
 * Installs a package of the system where this may be done: as root, with apt. Says what for.
 * @param {string} name
 * @param {string} what
 * @param {AbortSignal} signal
 */
export async function installPackage(name, what, signal) {
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return;
  await saying(`Installing ${what} from the system's packages`, () => install(name, signal));
}

/**
 * @param {string} name
 * @param {AbortSignal} signal
 */
async function install(name, signal) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const update = await runStep({ name: "apt-update", words: ["apt-get", "update"], env, signal });
  const words = ["apt-get", "install", "-y", "--no-install-recommends", name];
  const { ok, output } = await runStep({ name: "apt-install", words, env, signal });
  if (!ok) say(`${update.ok ? "" : update.output}${output}`.trimEnd());
}
