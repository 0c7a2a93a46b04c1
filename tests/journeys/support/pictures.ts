import { mkdirSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";

const folder = path.resolve(import.meta.dirname, "../../../test-results/journeys");

/** Keeps a picture of the page for people to look at. */
export async function picture(page: Page, name: string, fullPage = false): Promise<void> {
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: path.join(folder, `${name}.png`), fullPage });
}
