import { cautionLine } from "@cornerway/schema";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, projectId, type OpenService } from "./support/open-service.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

describe("every screen", () => {
  let service: OpenService;
  let browser: Browser;
  let checker: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    checker = await watchedPage(browser);
    await signIn(checker.page, service.origin, "checker");
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  it("carries the caution at every size and has no serious finding or error, before anyone is signed in", async () => {
    const watched = await watchedPage(browser);
    await watched.page.goto(service.origin, { waitUntil: "networkidle" });
    expect(await faultsAtEverySize(watched)).toEqual([]);
  });

  const sheets = [1, 2, 3, 4, 5, 6, 7].map((sheet) => `sheet/${sheet}`);
  const ofProject = ["settings", "cost-book", "premium", "alternatives", "survey", "site", "people"];
  it.each([
    ...["/", "/help", "/verification", "/notices", "/account", "/nowhere"],
    ...[...sheets, ...ofProject].map((page) => `/projects/${projectId}/${page}`),
  ])("carries the caution at every size and has no serious finding or error: %s", async (address) => {
    await checker.page.goto(service.origin + address, { waitUntil: "networkidle" });
    expect(await faultsAtEverySize(checker)).toEqual([]);
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

const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
];

/** What is wrong with a page that carries the caution at each size; the next is fetched at the last of them. */
async function faultsAtEverySize({ page, faults }: WatchedPage): Promise<string[]> {
  const findings = [];
  for (const size of sizes) {
    await page.setViewportSize(size);
    await page.getByText(cautionLine).first().waitFor();
    findings.push(...(await seriousFindings(page)).map((finding) => `${size.width} × ${size.height}: ${finding}`));
  }
  return [...findings, ...faults.splice(0)];
}
