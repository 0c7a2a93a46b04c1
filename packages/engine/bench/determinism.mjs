// Prints the hash of 200 generated schemes in this Node, in Chromium, and in any other Node given as an argument.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { chromium } from "playwright-core";

const count = Number(process.env.SCHEMES ?? 200);
const here = path.dirname(fileURLToPath(import.meta.url));
const folder = mkdtempSync(path.join(tmpdir(), "hash-"));
const bundle = path.join(folder, "hash.mjs");
try {
  await build({
    entryPoints: [path.join(here, "support/scheme-hash.ts")],
    bundle: true,
    format: "esm",
    conditions: ["development"],
    outfile: bundle,
    logLevel: "error",
  });
  writeFileSync(
    path.join(folder, "run.mjs"),
    `import { hashOfSchemes } from "./hash.mjs"; console.log(process.version, hashOfSchemes(${count}));`,
  );
  for (const node of [process.execPath, ...process.argv.slice(2)])
    process.stdout.write(execFileSync(node, [path.join(folder, "run.mjs")]));
  const iife = await build({
    entryPoints: [path.join(here, "support/scheme-hash.ts")],
    bundle: true,
    format: "iife",
    globalName: "Hash",
    conditions: ["development"],
    write: false,
    logLevel: "error",
  });
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-dev-shm-usage"],
  });
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: iife.outputFiles[0].text });
    console.log("Chromium", browser.version(), await page.evaluate((n) => globalThis.Hash.hashOfSchemes(n), count));
  } finally {
    await browser.close();
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
