import { existsSync } from "node:fs";
import path from "node:path";
import { runStep } from "../../apps/api/start/run-step.mjs";
import { say, saying } from "../../apps/api/start/say.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/**
 * Where a Chromium is: the one CHROMIUM_PATH names, one on the path, or the system's package, installed where this may be done.
 * @param {AbortSignal} signal
 * @returns {Promise<string | undefined>}
 */
export async function ensureChromium(signal) {
  const found = findChromium();
  if (found !== undefined) return found;
  if (mayInstall())
    await saying("Installing Chromium from the system's packages for the browser suite", () => install(signal));
  const installed = findChromium();
  if (installed === undefined)
    say(
      "No Chromium was found and none could be installed, so the browser suite fails: install one or set CHROMIUM_PATH.",
    );
  return installed;
}

function findChromium() {
  const folders = (process.env["PATH"] ?? "").split(path.delimiter);
  const candidates = NAMES.flatMap((name) => folders.map((folder) => path.join(folder, name)));
  return [process.env["CHROMIUM_PATH"] ?? "", ...candidates].find((file) => file !== "" && existsSync(file));
}

function mayInstall() {
  return process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
}

/** @param {AbortSignal} signal */
async function install(signal) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const update = await runStep({ name: "apt-update", words: ["apt-get", "update"], env, signal });
  const words = ["apt-get", "install", "-y", "--no-install-recommends", "chromium"];
  const { ok, output } = await runStep({ name: "apt-install", words, env, signal });
  if (!ok) say(`${update.ok ? "" : update.output}${output}`.trimEnd());
}
