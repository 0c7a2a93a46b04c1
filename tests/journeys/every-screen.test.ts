import { cautionLine } from "@cornerway/schema";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage } from "./support/watched-page.ts";

describe("every screen", () => {
  let service: OpenService;
  let browser: Browser;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  const sizes = [
    { width: 1440, height: 900 },
    { width: 1024, height: 768 },
    { width: 390, height: 844 },
  ];

  it.each(sizes)("carries the caution at $width × $height and has no serious finding or error", async (viewport) => {
    const { page, faults } = await watchedPage(browser, viewport);
    await page.goto(service.origin);
    await carriesCaution(page, "sign-in");
    await signIn(page, service.origin, "checker");
    const sheets = [1, 2, 3, 4, 5, 6, 7].map((sheet) => `/projects/${service.projectId}/sheet/${sheet}`);
    const ofProject = ["settings", "cost-book", "premium", "alternatives", "survey", "site", "people"].map(
      (page) => `/projects/${service.projectId}/${page}`,
    );
    const pages = ["/help", "/verification", "/notices", "/account", ...ofProject];
    for (const address of ["/", ...sheets, ...pages, "/nowhere"]) {
      await page.goto(service.origin + address);
      await carriesCaution(page, address);
    }
    expect(faults).toEqual([]);
  });

  it("would be reported with a style written inline, so that silence means there was none", async () => {
    const { page, faults } = await watchedPage(browser);
    await page.goto(service.origin);
    await page.evaluate(() => {
      const style = document.createElement("style");
      style.textContent = "p { color: red }";
      document.head.append(style);
    });
    await expect
      .poll(() => faults.filter((fault) => fault.startsWith("content-security policy: style-src")))
      .toHaveLength(1);
  });
});

async function carriesCaution(page: Page, where: string): Promise<void> {
  await page.getByText(cautionLine).first().waitFor();
  expect(await page.getByText(cautionLine).first().isVisible(), where).toBe(true);
  expect(await seriousFindings(page), where).toEqual([]);
}
