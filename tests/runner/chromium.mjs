import { existsSync } from "node:fs";
import { say } from "../../apps/api/start/say.mjs";
import { findProgram, installPackage } from "./system-package.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/**
 * Where a Chromium is: the one CHROMIUM_PATH names, one on the path, or the system's package, installed where this may be done.
 * @param {AbortSignal} signal
 * @returns {Promise<string | undefined>}
 */
export async function ensureChromium(signal) {
  const found = findChromium();
  if (found !== undefined) return found;
  await installPackage("chromium", "Chromium for the browser suite", signal);
  const installed = findChromium();
  if (installed === undefined)
    say(
      "No Chromium was found and none could be installed, so the browser suite fails: install one or set CHROMIUM_PATH.",
    );
  return installed;
}

function findChromium() {
  const named = process.env["CHROMIUM_PATH"] ?? "";
  return named !== "" && existsSync(named) ? named : findProgram(NAMES);
}
