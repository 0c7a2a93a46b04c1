import { readFile } from "node:fs/promises";
import { SignedHead } from "@cornerway/schema";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { verifyBundle } from "../../apps/api/src/record/verify-bundle.ts";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage } from "./support/watched-page.ts";

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
const broken = "The record is not the one this browser knew";

it("the record is taken away as a bundle that holds by a head saved apart, and a page that knew another record says so", async () => {
  const { page, faults } = await watchedPage(browser);
  await signIn(page, service.origin, "owner");
  await page.goto(`${service.origin}/projects/${service.projectId}/sheet/7`);
  const about = page.getByRole("region", { name: "About the record" });
  // Kept at the first look, and continued at the next, which comes when the line does.
  await about.getByText(/^(Kept in this browser from now on|It continues the head this browser kept before)/).waitFor();
  const head = SignedHead.parse(JSON.parse(await saved(page, "Take the signed head")));
  const bundle = await saved(page, "Take the record as a bundle");
  expect(verifyBundle(bundle, { head })).toMatchObject({ whole: true, originProved: true });
  expect(verifyBundle(bundle.replace("Chandler", "Chandlor"), { head })).toMatchObject({ whole: false });

  await page.reload();
  await about.getByText("It continues the head this browser kept before.").waitFor();
  await pictures(page, "record-proof");

  await keepOtherHead(page, { ...head, head: "0".repeat(64) });
  await page.reload();
  await page.getByRole("alert").getByText(broken).waitFor();
  expect(await seriousFindings(page)).toEqual([]);
  await pictures(page, "record-broken");
  await page.getByRole("button", { name: "I know why: go on from the record shown now" }).click();
  await about.getByText("It continues the head this browser kept before.").waitFor();
  expect(await page.getByText(broken).count()).toBe(0);
  expect(faults).toEqual([]);
});

async function saved(page: Page, name: string): Promise<string> {
  const coming = page.waitForEvent("download");
  await page.getByRole("link", { name }).click();
  return readFile(await (await coming).path(), "utf8");
}

/** What this browser keeps in place of the head it saw, as if the record had been another one then. */
async function keepOtherHead(page: Page, head: SignedHead): Promise<void> {
  await page.evaluate(
    (other) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open("cornerway");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction("kept", "readwrite");
          writing.objectStore("kept").put(other, `head ${other.project}`);
          writing.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    head,
  );
}

async function pictures(page: Page, name: string): Promise<void> {
  for (const size of sizes) {
    await page.setViewportSize(size);
    await page.getByRole("link", { name: "Take the signed head" }).scrollIntoViewIfNeeded();
    await picture(page, `${name}-${size.width}`);
  }
  await page.setViewportSize({ width: 1440, height: 900 });
}
