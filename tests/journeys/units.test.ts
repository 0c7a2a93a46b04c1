import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

describe("units", () => {
  let service: OpenService;
  let browser: Browser;
  let architect: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    architect = await watchedPage(browser);
    await signIn(architect.page, service.origin, "architect");
    await setFirst(architect.page);
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  it("are chosen once and every number of the sheet follows", async () => {
    const { page } = architect;
    await page.goto(`${service.origin}/projects/${service.projectId}/settings`);
    await page.getByLabel("Units").selectOption("US");
    expect(await page.getByLabel("Ground level, ft-in").inputValue()).toBe('0"');
    await page.getByRole("link", { name: "To the sheets" }).click();
    // 2,896 mm is 114.016 in, to the sixteenth 9'-6"; 12,192 mm is 480 in, 40'-0".
    await page.getByText(`+9'-6"`).first().waitFor();
    await page.locator(".paper").getByText(`40'-0"`).first().waitFor();
    await page
      .getByText(/\bkip\b/)
      .first()
      .waitFor();
    expect(await page.locator(".paper").textContent()).not.toMatch(/\bkN\b/);
    await picture(page, "30-units-us");
  });

  it("take what is typed in either", async () => {
    const { page } = architect;
    await page.keyboard.press(".");
    const east = page.getByLabel("Centre, east, ft-in");
    for (const [typed, shown] of [
      [`5'-3 1/2"`, `5'-3 1/2"`],
      ["1,613 mm", `5'-3 1/2"`],
      ["2,438 m", `8'-0"`],
    ] as const) {
      await east.fill(typed);
      await page.keyboard.press("Enter");
      await expect.poll(() => east.inputValue(), { timeout: 30_000 }).toBe(shown);
    }
    await east.fill("1,613");
    await page.keyboard.press("Enter");
    await page.getByText(/A comma before three figures needs its unit/).waitFor();
    await page.keyboard.press("Escape");
  });

  it("are kept for the person, and are back in metres when chosen back", async () => {
    const { page, faults } = architect;
    await page.reload();
    await page.getByText(`+9'-6"`).first().waitFor();
    await page.goto(`${service.origin}/help`);
    await page.getByLabel("Units").selectOption("SI");
    await page.goto(`${service.origin}/projects/${service.projectId}/sheet/1`);
    await page.getByText("+2.896").first().waitFor();
    expect(faults).toEqual([]);
  });
});

async function setFirst(page: Page): Promise<void> {
  await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
  await page.keyboard.press("s");
  await page.keyboard.press("Enter");
  await page.getByText("G1 · 40 ft high cube").waitFor();
}
