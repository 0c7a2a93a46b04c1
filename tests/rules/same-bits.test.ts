import { build } from "esbuild";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { hashOfSchemes } from "../../packages/engine/bench/support/scheme-hash.ts";
import { openBrowser } from "../journeys/support/browser.ts";

const SCHEMES = 40;

it("forty generated schemes are solved to the same bits here and in Chromium (packages/engine/bench/determinism.mjs: two hundred)", async () => {
  const script = await hashInOneFile();
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: script });
    expect(await page.evaluate(`Hash.hashOfSchemes(${SCHEMES})`)).toBe(hashOfSchemes(SCHEMES));
  } finally {
    await browser.close();
  }
}, 120_000);

async function hashInOneFile(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL("../../packages/engine/bench/support/scheme-hash.ts", import.meta.url))],
    bundle: true,
    format: "iife",
    globalName: "Hash",
    conditions: ["development"],
    write: false,
    logLevel: "error",
  });
  return outputFiles[0]?.text ?? "";
}
