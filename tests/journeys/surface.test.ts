import { readFileSync } from "node:fs";
import { Draft, SchemeFile, WebhookWord } from "@cornerway/schema";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { startListener, type Listener } from "../../apps/api/test/support/listener.ts";
import { verifyWebhook } from "../../apps/api/test/support/verify-webhook.ts";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

/** One architect: a file, a token and a webhook, each made by the page and used from outside it. */
describe("what other programs use", () => {
  let service: OpenService;
  let browser: Browser;
  let architect: WatchedPage;
  let listener: Listener;
  let token = "";

  beforeAll(async () => {
    listener = await startListener((_request, response) => response.end());
    service = await openService({ SECRETS_KEY: "5c".repeat(32), WEBHOOKS_TO_LOOPBACK: "yes" });
    browser = await openBrowser();
    architect = await watchedPage(browser);
    await signIn(architect.page, service.origin, "architect");
  });
  afterAll(async () => {
    await browser?.close();
    await service?.close();
    await listener?.close();
  });
  afterEach(async ({ task }) => {
    if (task.result?.state === "fail") await picture(architect.page, "failed-surface");
  });

  const asScript = (path: string) =>
    fetch(`${service.origin}${path}`, { headers: { authorization: `Bearer ${token}` } });

  it("a scheme file is brought into the empty sheet, and one step back takes it back", async () => {
    const { page } = architect;
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    const demo: unknown = JSON.parse(readFileSync(new URL("../../shared/demo/scheme.json", import.meta.url), "utf8"));
    const file = { format: "cornerway-scheme", version: 1, scheme: demo };
    const chosen = page.getByLabel("Scheme file to bring in").first();
    await chosen.setInputFiles({ name: "demo.json", mimeType: "application/json", buffer: Buffer.from("{") });
    await page.getByText("it is not JSON").first().waitFor();
    await picture(page, "surface-01-file-refused");
    expect(await seriousFindings(page)).toEqual([]);
    const buffer = Buffer.from(JSON.stringify(file));
    await chosen.setInputFiles({ name: "demo.json", mimeType: "application/json", buffer });
    await page
      .locator('[data-id="g1"], [data-element-id="g1"]')
      .or(page.getByText("G1", { exact: true }))
      .first()
      .waitFor();
    await picture(page, "surface-02-file-brought-in");
    await page.keyboard.press("Control+z");
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await page.keyboard.press("Control+Shift+z");
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor({ state: "detached" });
  });

  it("the draft is saved as a file with the cautions", async () => {
    const { page } = architect;
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "Take it as a file" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^chandler-s-steps-draft-\d+\.json$/);
    const saved = SchemeFile.parse(JSON.parse(readFileSync(await download.path(), "utf8")));
    expect(saved.cautions[0]).toContain("preliminary until sealed");
    expect(saved.scheme.containers.length).toBeGreaterThan(3);
  });

  it("a token is made on the account page and reads what the architect sees", async () => {
    const { page } = architect;
    await page.goto(`${service.origin}/account`);
    await page.getByLabel("What the new token is for").fill("a report");
    await page.getByRole("button", { name: "Make a token" }).click();
    token = await page.getByLabel("Token", { exact: true }).inputValue();
    await picture(page, "surface-03-token", true);
    expect(await seriousFindings(page)).toEqual([]);
    const answer = await asScript(`/api/projects/${service.projectId}/draft`);
    expect(Draft.parse(await answer.json()).scheme.containers.length).toBeGreaterThan(3);
    await page.getByRole("button", { name: "Withdraw" }).click();
    await page.getByRole("row", { name: /a report/ }).waitFor({ state: "detached" });
    expect((await asScript("/api/projects")).status).toBe(401);
  });

  it("an address set on the people page is told of the next act, signed", async () => {
    const { page } = architect;
    await page.goto(`${service.origin}/projects/${service.projectId}/people`);
    await page.getByLabel("Address to be told, https").fill(listener.url);
    await page.getByRole("button", { name: "Have it told" }).click();
    const secret = await page.getByLabel("Secret").inputValue();
    await picture(page, "surface-04-webhook", true);
    expect(await seriousFindings(page)).toEqual([]);
    await expect.poll(() => listener.heard.length, { timeout: 60_000 }).toBeGreaterThan(0);
    const [{ headers, body } = { headers: undefined, body: "" }] = listener.heard;
    expect(verifyWebhook(secret, String(headers?.["cornerway-signature"]), body, Date.now())).toBe(true);
    expect(WebhookWord.parse(JSON.parse(body)).entry.kind).toBe("webhook made");
    await page.getByText(/Last told of entry \d+/).waitFor();
  });

  it("the reference of the API is read without a script, and breaks no policy", async () => {
    const { page } = architect;
    await page.goto(`${service.origin}/api/reference`);
    await page.getByRole("heading", { level: 1, name: "Cornerway, API reference" }).waitFor();
    await picture(page, "surface-05-reference");
    expect(await seriousFindings(page)).toEqual([]);
    expect(architect.faults).toEqual([]);
  });
});
