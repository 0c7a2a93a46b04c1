import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

describe("the first steps, by keyboard alone", () => {
  let service: OpenService;
  let browser: Browser;
  let architect: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    architect = await watchedPage(browser);
    await signIn(architect.page, service.origin, "architect");
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  it("lead from an empty sheet over a stack, a shift, a mark and a way back to sending", async () => {
    const { page, faults } = architect;
    await step(page, 1, "Set the first container").waitFor();
    await picture(page, "31-tour-begins");
    expect(await seriousFindings(page)).toEqual([]);
    await page.keyboard.press("s");
    await page.keyboard.press("Enter");

    await step(page, 2, "Stack another on it").waitFor();
    await page.keyboard.press("s");
    // The typed twin of holding it over the first: its level is the height of a 40 ft high cube, 2.896 m (ISO 668).
    await page.getByLabel("Centre, east, m").fill("0");
    await page.getByLabel("Level, m").fill("2.896");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Set .* here/ }).press("Enter");

    await step(page, 3, "Shift the upper one").waitFor();
    await page.keyboard.press("Escape");
    await chooseUpper(page);
    for (let times = 0; times < 4; times += 1) await page.keyboard.press("Shift+ArrowRight");

    await step(page, 4, "Read the mark").waitFor();
    await picture(page, "31-tour-mark");
    await page.keyboard.press("n");

    await step(page, 5, "Take the move back").waitFor();
    await page.keyboard.press("Control+z");

    await step(page, 6, "Send it").waitFor();
    await picture(page, "31-tour-send");
    await page.getByRole("button", { name: "I know the way now" }).press("Enter");
    await expect.poll(() => page.getByText(/^First steps/).count()).toBe(0);
    expect(faults).toEqual([]);
  });

  it("are remembered: they do not come back", async () => {
    const { page } = architect;
    await page.reload();
    await page
      .getByText(/Notes, as you draw/i)
      .first()
      .waitFor();
    expect(await page.getByText(/^First steps/).count()).toBe(0);
  });
});

const step = (page: Page, number: number, heading: string): Locator =>
  page.getByRole("region", { name: `First steps, ${number} of 6` }).getByRole("heading", { name: heading });

/** The full stop chooses one thing after the other; the upper unit is the one whose level is not zero. */
async function chooseUpper(page: Page): Promise<void> {
  for (let times = 0; times < 14; times += 1) {
    await page.keyboard.press(".");
    const level = page.getByLabel("Level, m");
    if ((await level.count()) > 0 && (await level.inputValue()) === "2.896") return;
  }
  throw new Error("the upper container was not among what can be chosen");
}
