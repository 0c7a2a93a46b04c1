import type { Role } from "@cornerway/schema";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { passwordOf, signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

const sizes = { architect: [1440, 900], engineer: [1024, 768], checker: [390, 844] } as const;
type Someone = keyof typeof sizes & Role;

/** Three people, each at a sheet of another size. */
describe("a question is answered with a condition, a revision checked and stamped on one item", () => {
  let service: OpenService;
  let browser: Browser;
  const at = new Map<Someone, WatchedPage>();
  const pageOf = (someone: Someone): Page => {
    const watched = at.get(someone);
    if (watched === undefined) throw new Error(`the ${someone} has no page`);
    return watched.page;
  };
  const open = (someone: Someone, place: string) =>
    pageOf(someone).goto(`${service.origin}/projects/${service.projectId}/${place}`);

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    for (const someone of ["architect", "engineer", "checker"] as const) {
      const [width, height] = sizes[someone];
      const watched = await watchedPage(browser, { width, height });
      at.set(someone, watched);
      await signIn(watched.page, service.origin, someone);
    }
  });
  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });
  afterEach(async ({ task }) => {
    if (task.result?.state !== "fail") return;
    for (const [name, { page, faults }] of at) {
      await picture(page, `failed-question-${name}`);
      if (faults.length > 0) console.error(name, faults);
    }
  });

  it("the architect asks about G1 of revision A, with a day", async () => {
    const page = pageOf("architect");
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await page.keyboard.press("s");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Send revision A to the engineer" }).click();
    await open("architect", "sheet/3");
    await page.getByText("Revision A, from Tilda Varrow").waitFor();
    await page.keyboard.press(".");
    await page.getByRole("button", { name: "Ask the engineer about G1" }).click();
    await page.getByLabel("What is wanted", { exact: true }).fill("May the south side be opened 3 m?");
    await page.getByRole("button", { name: "Ask about G1" }).click();
    await page.getByText("Question 1 on G1, asked: waits for the engineer").waitFor();
    await picture(page, "question-1-asked");
    expect(await seriousFindings(page)).toEqual([]);
  });

  it("the engineer finds it on the desk and answers with a condition", async () => {
    const page = pageOf("engineer");
    await page.goto(service.origin);
    await page.getByRole("link", { name: "the answer to question 1" }).click();
    await page.getByLabel("Answer", { exact: true }).selectOption("with conditions");
    await page.getByRole("button", { name: "Add a condition" }).click();
    await page.getByLabel("What must be done, condition 1", { exact: true }).fill("Leave 1.2 m at either end.");
    const answer = page.getByRole("button", { name: /^Answer question 1 for revision A/ });
    await expect.poll(() => answer.getAttribute("aria-disabled"), { timeout: 60_000 }).toBeNull(); // once it is checked
    await answer.click();
    await page.getByText("Condition 1, open: waits for the architect").waitFor();
    await picture(page, "question-2-answered");
    expect(await seriousFindings(page)).toEqual([]);
  });

  it("the architect closes the question and says how the condition is met; the engineer closes that", async () => {
    const page = pageOf("architect");
    await page.getByRole("button", { name: "Close question 1" }).click();
    await page.getByText("Question 1 on G1, closed").waitFor();
    await page.getByLabel("How it is met").fill("Drawn in.");
    await page.getByRole("button", { name: "It is met so" }).click();
    await pageOf("engineer").getByText("Condition 1, met: waits for you").waitFor();
    await pageOf("engineer").getByRole("button", { name: "Close it", exact: true }).click();
    await page.getByText("No condition is open").waitFor();
    expect(await page.getByText("Question 1 on G1, closed").count()).toBe(1);
  });

  it("the checker agrees on a phone, and reads what stands in the way of the seal", async () => {
    const page = pageOf("checker");
    await open("checker", "seal");
    await page.getByLabel("What was checked, and how", { exact: true }).fill("Weights and reactions by hand.");
    await page.getByRole("button", { name: "Agree with revision A" }).click();
    await page.getByText(/^Check 1, /).waitFor();
    await page.getByText("Strength is not judged under all loads").first().waitFor();
    await picture(page, "question-3-checked", true);
    expect(await seriousFindings(page)).toEqual([]);
  });

  it("the engineer stamps G1 alone, with the password asked again", async () => {
    const page = pageOf("engineer");
    await page.keyboard.press(".");
    await page.getByRole("button", { name: "Stamp G1 alone" }).click();
    await page.getByRole("radio", { name: /Revise and resubmit/ }).click();
    await page.getByLabel("What is to be done", { exact: true }).fill("Draw the frame of the opening.");
    const password = page.getByLabel("Your password, once more", { exact: true });
    await password.fill(passwordOf("engineer"));
    await page.getByRole("button", { name: "Press the stamp" }).click();
    await page.getByText("G1: Revise and resubmit").waitFor();
    await picture(page, "question-4-item-stamped");
    expect(await seriousFindings(page)).toEqual([]);
    for (const { faults } of at.values()) expect(faults).toEqual([]);
  });
});
