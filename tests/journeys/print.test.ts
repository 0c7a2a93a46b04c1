import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

// The printed sheet is read by poppler (pdftotext), which knows nothing of what wrote it.

const ptPerMm = 72 / 25.4;

describe("sheet 1 as it comes from the printer", () => {
  let service: OpenService;
  let browser: Browser;
  let desk: WatchedPage;
  const folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-print-"));

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    desk = await watchedPage(browser);
    await signIn(desk.page, service.origin, "architect");
    await desk.page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await desk.page.keyboard.press("s");
    await desk.page.getByRole("button", { name: "Set G1 here" }).click();
    await desk.page.getByText("G1 · 40 ft high cube").waitFor(); // G1 is chosen: its form stands in the margin
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("is as long as its scales say: at 1:100 the 12.192 m between grids 1 and 2 are 345.6 pt", async () => {
    const { words, text } = await printed();
    const ratios = [...text.matchAll(/1:(\d+)/g)].map(([, ratio]) => Number(ratio));
    // ISO 668, from memory: a 40 ft container is 12.192 m long, from grid 1 at its one end to grid 2 at its other.
    const [elevation, plan] = gridsApart(words);
    expect(elevation).toBeCloseTo((12_192 / (ratios[0] ?? 0)) * ptPerMm, 1);
    expect(plan).toBeCloseTo((12_192 / (ratios[1] ?? 0)) * ptPerMm, 1);
    expect(ratios[0]).toBe(100);
    expect(elevation).toBeCloseTo(345.6, 1);
  });

  it("carries no field and no command of what is chosen", async () => {
    expect(await desk.page.getByLabel("Level, m").isVisible()).toBe(true);
    const { text } = await printed();
    expect(text).toContain("Screening. Preliminary until sealed by a licensed engineer");
    expect(text).not.toMatch(/Centre, east|Level, m|Turn, °|Lay out/);
  });

  async function printed(): Promise<{ words: Word[]; text: string }> {
    const file = path.join(folder, "sheet.pdf");
    await desk.page.pdf({ path: file, preferCSSPageSize: true });
    const boxes = execFileSync("pdftotext", ["-bbox", "-f", "1", "-l", "1", file, "-"], { encoding: "utf8" });
    const text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
    return { words: wordsIn(boxes), text };
  }
});

type Word = { readonly text: string; readonly left: number; readonly right: number; readonly top: number };

/** Words of a page with their boxes in pt, from the top left. */
const wordsIn = (boxes: string): Word[] =>
  [...boxes.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="[\d.]+">([^<]*)</g)].map(
    ([, left, top, right, text = ""]) => ({ text, left: Number(left), right: Number(right), top: Number(top) }),
  );

/** How far the middles of grids 1 and 2 stand apart in each view that has both on one line, from the top, pt. */
function gridsApart(words: readonly Word[]): number[] {
  const middles = (figure: string) =>
    words
      .filter(({ text }) => text === figure)
      .toSorted((a, b) => a.top - b.top)
      .map(({ left, right, top }) => ({ middle: (left + right) / 2, top }));
  const twos = middles("2");
  return middles("1").flatMap((one) =>
    twos.filter((two) => two.top === one.top).map(({ middle }) => middle - one.middle),
  );
}
