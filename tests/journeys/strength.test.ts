import { cautionLine } from "@cornerway/schema";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { heldUnit } from "../../apps/api/test/support/held-unit.ts";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const;

/** One unit that works: judged while it is drawn, judged again by the service, read by the engineer, and let go on. */
describe("strength from the draft to the stamp", () => {
  let service: OpenService;
  let browser: Browser;
  let architect: WatchedPage;
  let engineer: WatchedPage;

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
  afterEach(async ({ task }) => {
    if (task.result?.state === "fail") await picture((engineer ?? architect).page, "failed-strength");
  });

  it("the draft is judged once the hand rests, and a chosen thing opens to its working by keyboard", async () => {
    const { page, faults } = architect;
    const file = { format: "cornerway-scheme", version: 1, scheme: heldUnit() };
    const buffer = Buffer.from(JSON.stringify(file));
    const chosen = page.getByLabel("Scheme file to bring in").first();
    await chosen.setInputFiles({ name: "held.json", mimeType: "application/json", buffer });
    await judged(page);
    await page.keyboard.press(".");
    await page
      .getByRole("button", { name: /Open its working/ })
      .first()
      .waitFor();
    await page.keyboard.press("Enter");
    const paper = page.getByRole("dialog", { name: /^Working: G1 / });
    await paper.locator("math").first().waitFor();
    expect(await paper.getByText(cautionLine).count()).toBe(1);
    expect(await seriousFindings(page)).toEqual([]);
    await picture(page, "strength-01-working-of-the-draft");
    await page.keyboard.press("Escape");
    await paper.waitFor({ state: "detached" });
    expect(faults).toEqual([]);
  });

  it("a move puts what strength said in waiting, and it is judged anew", async () => {
    const { page } = architect;
    await page.keyboard.press("ArrowRight");
    await page
      .getByText(/strength (waits|\d of \d)/)
      .first()
      .waitFor();
    expect(await page.locator(".title-block").filter({ hasText: "Works as built" }).count()).toBe(0);
    await page.keyboard.press("Control+z");
    await judged(page);
  });

  it("the service judges what is sent, and the engineer reads every calculation on sheet 6 at any width", async () => {
    await architect.page
      .getByRole("button", { name: /^Send .*revision A/ })
      .first()
      .click();
    engineer = await watchedPage(browser);
    const { page, faults } = engineer;
    const refused: string[] = [];
    page.on("response", (answer) => {
      if (answer.status() >= 400) refused.push(`${answer.status()} ${answer.url()}`);
    });
    await signIn(page, service.origin, "engineer");
    await page.goto(`${service.origin}/projects/${service.projectId}/sheet/6`);
    await page.getByRole("heading", { name: "Governing checks" }).waitFor({ timeout: 60_000 });
    for (const { width, height } of sizes) {
      await page.setViewportSize({ width, height });
      await page.getByText("bottom side rail").first().scrollIntoViewIfNeeded();
      await picture(page, `strength-02-calculations-${width}`, width === 390);
      expect(await seriousFindings(page)).toEqual([]);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow, `${width}`).toBeLessThanOrEqual(0);
    }
    await page.setViewportSize(sizes[0]);
    const family = page.locator("details", { hasText: "bottom side rail" }).first();
    await family.locator("summary").press("Enter");
    await family.getByRole("button").first().press("Enter");
    for (const { width, height } of sizes) {
      await page.setViewportSize({ width, height });
      await page
        .getByRole("dialog", { name: /^Working: / })
        .locator("math")
        .first()
        .waitFor();
      await picture(page, `strength-03-working-${width}`);
      expect(await seriousFindings(page)).toEqual([]);
    }
    await page.setViewportSize(sizes[0]);
    await page.keyboard.press("Escape");
    expect(refused).toEqual([]);
    expect(faults).toEqual([]);
  });
});

const judged = (page: Page) =>
  page
    .getByText(/[\d,]+ checks on [\d,]+ load vectors/)
    .first()
    .waitFor({ timeout: 120_000 });
