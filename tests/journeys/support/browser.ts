import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";

const candidates = [
  process.env["CHROMIUM_PATH"] ?? "",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

const quiet = [
  "--no-sandbox",
  "--disable-dev-shm-usage",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Chromium as it is installed on this machine. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = candidates.find((file) => file !== "" && existsSync(file));
  if (executablePath === undefined) throw new Error("no Chromium is installed; set CHROMIUM_PATH");
  return chromium.launch({ executablePath, args: quiet });
}
