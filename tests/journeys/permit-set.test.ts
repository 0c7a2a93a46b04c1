import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage } from "./support/watched-page.ts";

const comments = "1. Seal is missing.\n2. State the soil value used for the pads.";
/** Laying a set out and writing it, beside all else that runs. */
const printedWithinMs = 90_000;

describe("a permit set is printed, and a plan check answered", () => {
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

  it("the architect draws, sends, brings in the comments and takes the set that answers one of them", async () => {
    const { page } = await watchedPage(browser);
    await signIn(page, service.origin, "architect");
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await page.keyboard.press("s");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Send revision A to the engineer" }).click();
    await page.goto(`${service.origin}/projects/${service.projectId}/sheet/7`);
    await page.getByText("Revision A: ").first().waitFor({ timeout: printedWithinMs });
    await page.getByRole("link", { name: "The permit set and the plan check" }).click();

    await page.getByLabel("Comments of the authority").fill(comments);
    await page.getByRole("button", { name: "Bring in these lines" }).click();
    await page.getByText("2 comments came in: 2 open, 0 answered, 0 closed").waitFor();
    await page.getByText("Answer comment 2", { exact: true }).first().click();
    await page.getByLabel("Reply", { exact: true }).last().fill("Stated on the foundation plan.");
    await page.getByLabel("Sheet", { exact: true }).last().fill("S7");
    await page.getByRole("button", { name: "Answer comment 2" }).click();
    await page.getByText("2 comments came in: 1 open, 1 answered, 0 closed").waitFor();
    expect(await page.getByRole("button", { name: "Close comment 2" }).count()).toBe(1);

    await page.getByRole("button", { name: "Print the permit set of revision A" }).click();
    const taken = page.getByRole("link", { name: "Take the PDF of revision A" });
    await taken.waitFor({ timeout: printedWithinMs });
    const [download] = await Promise.all([page.waitForEvent("download"), taken.click()]);
    expect(download.suggestedFilename()).toMatch(/^permit-set-A-to-entry-\d+\.pdf$/);
    await picture(page, "permit-set", true);
    expect(await seriousFindings(page)).toEqual([]);
  });
});
