import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

/** The architect at two desks, and a reader: what one draws the other sees, and nothing is lost when both draw. */
describe("two hands on one draft", () => {
  let service: OpenService;
  let browser: Browser;
  let desk: WatchedPage;
  let site: WatchedPage;
  let reader: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    [desk, site, reader] = await Promise.all([watchedPage(browser), watchedPage(browser), watchedPage(browser)]);
    await signIn(desk.page, service.origin, "architect");
    await signIn(site.page, service.origin, "architect");
    await signIn(reader.page, service.origin, "reader");
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  afterEach(async ({ task }) => {
    if (task.result?.state !== "fail") return;
    for (const [name, { page, faults }] of Object.entries({ desk, site, reader })) {
      await picture(page, `failed-${name}`);
      if (faults.length > 0) console.error(name, faults);
    }
  });

  it("what one sets down appears at the other, who moves it in steps of 10 mm and 305 mm", async () => {
    await desk.page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await desk.page.keyboard.press("s");
    await desk.page.keyboard.press("Enter");
    await unit(site.page, "G1").click();
    await site.page.keyboard.press("ArrowRight");
    await site.page.keyboard.press("Shift+ArrowRight");
    // 10 mm and a cross-member bay of 305 mm.
    await expectField(site.page, "Centre, east, m", "0.315");
    await unit(desk.page, "G1").click();
    await expectField(desk.page, "Centre, east, m", "0.315");
  });

  it("cut off, moves are kept on the page, and it says since when and how many", async () => {
    const { page } = site;
    await page.context().setOffline(true);
    await page.keyboard.press("ArrowLeft");
    await page.getByText(/The line to the office dropped at \d\d:\d\d\. One move is kept here/).waitFor();
    await picture(page, "20-cut-off");
    await expectField(page, "Centre, east, m", "0.305");
  });

  it("the later move lies over the earlier as a ghost, with both answers, and mine goes on top", async () => {
    await desk.page.keyboard.press("Shift+ArrowRight");
    await expectField(desk.page, "Centre, east, m", "0.620");
    const { page } = site;
    await page.context().setOffline(false);
    await page.getByRole("region", { name: "Two hands on one thing" }).waitFor({ timeout: 30_000 });
    await picture(page, "21-two-hands");
    expect(await seriousFindings(page)).toEqual([]);
    await expectField(page, "Centre, east, m", "0.620");
    await page.getByRole("button", { name: "Draw mine" }).click();
    await expectField(page, "Centre, east, m", "0.305");
    await expectField(desk.page, "Centre, east, m", "0.305");
  });

  it("an opening is cut by typing, goes with its unit, and one step back brings both back", async () => {
    const { page } = desk;
    await page.keyboard.press("c");
    await page.getByLabel("Along, m").fill("4,0");
    await page.getByRole("button", { name: "Cut it in G1" }).click();
    await page.getByText("D1 · door in G1").waitFor();
    await page.keyboard.press("Escape");
    await unit(page, "G1").click({ position: { x: 40, y: 40 } });
    await page.getByRole("button", { name: "Take G1 away" }).click();
    await page.getByText("Door D1 hangs on it and would go too.").waitFor();
    await page.getByRole("button", { name: "Take G1 and what hangs on it away" }).click();
    await expect.poll(() => unit(page, "G1").count()).toBe(0);
    await page.keyboard.press("Control+z");
    await unit(page, "G1").waitFor();
    await page
      .getByRole("treeitem", { name: /door D1/ })
      .first()
      .waitFor({ state: "attached" });
    await picture(page, "22-brought-back");
  });

  it("a thing is chosen by key and its wall taken out without a pointer", async () => {
    const { page } = desk;
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    await page.keyboard.press(".");
    await page.getByText("G1 · 40 ft high cube").waitFor();
    await page.keyboard.press("w");
    await page.getByLabel("Wall", { exact: true }).selectOption("left");
    await page.getByRole("button", { name: "Take the left wall out" }).focus();
    await page.keyboard.press("Enter");
    await page.getByText("O1 · open-wall in G1").waitFor();
    expect(await page.getByLabel("Use").inputValue()).toBe("open-wall");
  });

  it("the key list opens and closes", async () => {
    const { page } = desk;
    await page.keyboard.press("?");
    await page.getByRole("dialog", { name: "Keys of this sheet" }).waitFor();
    await picture(page, "23-keys");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
  });

  it("a reader lands on the record, sees no drawing acts, and finds the tools asleep with the reason", async () => {
    const { page } = reader;
    await page.getByRole("heading", { name: "The record", exact: true }).waitFor();
    const told = await page.locator("[data-entry]").allInnerTexts();
    expect(told.length).toBeGreaterThan(0);
    expect(told.filter((words) => /G1|moved|cut/.test(words))).toEqual([]);
    await page.keyboard.press("1");
    const stack = page.getByRole("button", { name: /^Stack/ });
    expect(await stack.getAttribute("aria-disabled")).toBe("true");
    expect(await stack.getAttribute("title")).toBe("Only the architect draws.");
    await picture(page, "24-reader");
    expect(reader.faults).toEqual([]);
  });
});

const unit = (page: Page, tag: string): Locator =>
  page
    .getByRole("tree", { name: "south elevation" })
    .getByRole("treeitem", { name: new RegExp(`^${tag}, \\d+ ft`) })
    .first();

const expectField = (page: Page, label: string, value: string) =>
  expect.poll(() => page.getByLabel(label).inputValue()).toBe(value);
