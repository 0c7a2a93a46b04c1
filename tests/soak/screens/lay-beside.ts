import { readFileSync } from "node:fs";
import path from "node:path";
import type { Browser } from "playwright-core";

/** Lays pictures side by side, each with its name, as one picture. */
export async function layBeside(browser: Browser, files: readonly string[], into: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 3300, height: 1060 } });
  const figures = files.map(
    (file) =>
      `<figure><figcaption>${path.basename(file)}</figcaption><img src="data:image/png;base64,${readFileSync(file).toString("base64")}"></figure>`,
  );
  await page.setContent(
    `<style>body{display:flex;gap:12px;margin:12px;width:max-content;font:16px sans-serif}figure{margin:0}img{height:1000px;width:auto}</style>${figures.join("")}`,
  );
  await page.screenshot({ path: into, fullPage: true });
  await page.close();
}
