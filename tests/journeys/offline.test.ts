import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { demoPeople } from "../../apps/api/src/seed/demo-people.ts";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage } from "./support/watched-page.ts";

describe("while the line is down", () => {
  let service: OpenService;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let sheet: string;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    ({ page } = await watchedPage(browser));
    context = page.context();
    sheet = `${service.origin}/projects/${service.projectId}/sheet/1`;
    await signIn(page, service.origin, "architect");
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await page.keyboard.press("s");
    await page.keyboard.press("Enter");
    await page.getByText("G1 · 40 ft high cube").waitFor();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    // What the page is made of is on the shelf last of all, after what was fetched ahead.
    await vi.waitUntil(() => page.evaluate(() => performance.getEntriesByName("shell kept").length > 0), {
      timeout: 120_000,
    });
    await vi.waitUntil(() => allKept(page), { timeout: 60_000 });
    await vi.waitUntil(async () => (await keptKeys(page)).some((key) => key.startsWith("draft ")), { timeout: 60_000 });
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  it("moves are kept, said in the foot, and outlive the page, which opens without the service", async () => {
    await context.setOffline(true);
    await move(page, "0.500");
    await move(page, "0.700");
    await page.getByText("2 moves wait for the line.").waitFor();
    await picture(page, "32-offline");
    await page.close();
    page = await context.newPage();
    await page.goto(sheet);
    await twoMovesWait(page);
    await page.keyboard.press(".");
    await expect.poll(() => east(page).inputValue()).toBe("0.700");
    await picture(page, "32-offline-again");
  });

  it("leaving the desk asks about what only this browser holds", async () => {
    await page.goto(`${service.origin}/`);
    await page.getByRole("button", { name: "Leave the desk" }).click();
    await page.getByText(/2 moves wait in this browser for the line/).waitFor();
    await page.getByRole("button", { name: "Stay" }).click();
    await page.goto(sheet);
    await twoMovesWait(page);
    expect((await keptKeys(page)).filter((key) => key.startsWith("acts "))).toHaveLength(1);
  });

  it("two pages of one person hold them once, and they are sent once and in order when the line is back", async () => {
    const other = await context.newPage();
    await other.goto(sheet);
    await other
      .getByText(/Notes, as you draw/i)
      .first()
      .waitFor();
    await context.setOffline(false);
    await expect.poll(() => page.getByText(/wait for the line/).count(), { timeout: 30_000 }).toBe(0);
    await expect.poll(() => keptKeys(page).then((keys) => keys.filter((key) => key.startsWith("acts ")))).toEqual([]);
    await other.close();
    await page.goto(`${service.origin}/projects/${service.projectId}/sheet/7`);
    await page.getByText("G1 moved 0.50 m east.").waitFor({ timeout: 60_000 });
    const told = await page.locator("[data-entry] .record-what").allInnerTexts();
    expect(told.filter((words) => words.includes("G1 moved")).map((words) => words.trim())).toEqual([
      "G1 moved 0.50 m east.",
      "G1 moved 0.20 m east.",
    ]);
  });

  it("nothing of the person stays in the browser once they left the desk", async () => {
    await page.goto(`${service.origin}/`);
    await page.getByRole("button", { name: "Leave the desk" }).click();
    await page.getByRole("button", { name: "Open the desk" }).waitFor();
    const id = demoPeople.find(({ role }) => role === "architect")?.id ?? "";
    expect((await keptKeys(page)).filter((key) => key.includes(id))).toEqual([]);
    const cached = await page.evaluate(async () =>
      (await (await caches.open("cornerway-shell-1")).keys()).map(({ url }) => url),
    );
    expect(cached.filter((url) => url.includes("/api/"))).toEqual([]);
  });
});

const east = (page: Page) => page.getByLabel("Centre, east, m");

async function move(page: Page, to: string): Promise<void> {
  await east(page).fill(to);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.getByText(/kept here and sent when it is back/).count()).toBe(1);
}

/** Seen on a page that was opened without a line. Where it is not, what stands there instead is told: that names the cause. */
async function twoMovesWait(page: Page): Promise<void> {
  try {
    await page.getByText("2 moves wait for the line.").waitFor({ timeout: 60_000 });
  } catch (cause) {
    const shown = await page.locator("body").innerText();
    const locks = await page.evaluate(async () => JSON.stringify(await navigator.locks.query()));
    const told = `the page shows: ${shown}\nkept: ${(await keptKeys(page)).join(", ")}\nlocks: ${locks}`;
    console.error(told); // at once: a suite that is ended leaves no report
    throw new Error(told, { cause });
  }
}

/** True once every part the page has fetched so far is on the shelf of the worker. */
const allKept = (page: Page): Promise<boolean> =>
  page.evaluate(async () => {
    const shelf = await (await caches.open("cornerway-shell-1")).keys();
    const kept = new Set(shelf.map(({ url }) => url));
    const fetched = performance.getEntriesByType("resource").map(({ name }) => name);
    return fetched.filter((name) => name.startsWith(`${location.origin}/assets/`)).every((name) => kept.has(name));
  });

/** Keys of what this browser keeps for the sheets. */
const keptKeys = (page: Page): Promise<string[]> =>
  page.evaluate(
    () =>
      new Promise<string[]>((done, failed) => {
        const open = indexedDB.open("cornerway");
        open.addEventListener("error", () => failed(open.error));
        open.addEventListener("success", () => {
          if (!open.result.objectStoreNames.contains("kept")) return done([]);
          const keys = open.result.transaction("kept").objectStore("kept").getAllKeys();
          keys.addEventListener("success", () => {
            done(keys.result.map(String));
            open.result.close();
          });
        });
      }),
  );
