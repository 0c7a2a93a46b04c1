import { cautionLine } from "@cornerway/schema";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { passwordOf, signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

const phone = { width: 390, height: 844 };

/** Three people in three browsers, each page opened once and never fetched again. */
describe("a scheme goes from the first container to a stamped revision", () => {
  let service: OpenService;
  let browser: Browser;
  let architect: WatchedPage;
  let engineer: WatchedPage;
  let owner: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    [architect, engineer, owner] = await Promise.all([
      watchedPage(browser),
      watchedPage(browser),
      watchedPage(browser, phone),
    ]);
    await signIn(architect.page, service.origin, "architect");
    await signIn(engineer.page, service.origin, "engineer");
    await signIn(owner.page, service.origin, "owner");
    for (const { page } of [architect, engineer, owner])
      await page.evaluate(() => Reflect.set(globalThis, "neverReloaded", true));
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  // What each page looked like where a step failed, and what it complained of.
  afterEach(async ({ task }) => {
    if (task.result?.state !== "fail") return;
    for (const [name, { page, faults }] of Object.entries({ architect, engineer, owner })) {
      await picture(page, `failed-${name}`);
      if (faults.length > 0) console.error(name, faults);
    }
  });

  it("engineer and owner see that nothing was sent yet", async () => {
    await engineer.page.getByText("The architect has not sent a revision.").waitFor();
    await owner.page.getByRole("heading", { level: 1, name: "Chandler's Steps is being drawn." }).waitFor();
    await picture(engineer.page, "01-engineer-nothing-sent");
    await picture(owner.page, "01-owner-being-drawn", true);
    expect(await seriousFindings(engineer.page)).toEqual([]);
    expect(await seriousFindings(owner.page)).toEqual([]);
  });

  it("the architect sets a container by keyboard and stacks another on its corners with the pointer", async () => {
    const { page } = architect;
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await picture(page, "02-architect-empty");
    expect(await seriousFindings(page)).toEqual([]);
    await page.keyboard.press("s");
    await page.keyboard.press("Enter");
    await drawn(page, "G1").waitFor();
    await picture(page, "02-architect-first");
    await page.keyboard.press("s");
    const box = await boxOf(drawn(page, "G1"));
    await page.mouse.move(box.x + box.width / 2 + 9, box.y - box.height / 2 + 6, { steps: 4 });
    await page.getByRole("button", { name: "Set F1 here" }).waitFor();
    await page.mouse.down();
    await page.mouse.up();
    await drawn(page, "F1").waitFor();
    await page
      .getByRole("status")
      .getByText(/^F1 set, a 40 ft high cube\. .*works as built/)
      .waitFor({ state: "attached" });
    // G1 stands at the origin; a 40 ft high cube is 2.896 m high (ISO 668). Snapped, F1 has its fittings on those of G1.
    await expectField(page, "Centre, east, m", "0.000");
    await expectField(page, "Centre, north, m", "0.000");
    await expectField(page, "Level, m", "2.896");
  });

  it("a turned container whose centre a decimal comma puts beyond its bearings does not work", async () => {
    const { page } = architect;
    await page.keyboard.press("s");
    await page.keyboard.press("t");
    const box = await boxOf(drawn(page, "F1"));
    await page.mouse.move(box.x + box.width / 2, box.y - box.height / 2, { steps: 4 });
    await page.getByRole("button", { name: "Set T1 here" }).waitFor();
    await page.mouse.down();
    await page.mouse.up();
    await drawn(page, "T1").waitFor();
    await page.getByLabel("Centre, north, m").fill("-3,0");
    await page.keyboard.press("Enter");
    await note(page, "Does not work").first().waitFor();
    await expectField(page, "Centre, north, m", "-3.000");
  });

  it("marks on an opening appear while it is being drawn", async () => {
    const { page } = architect;
    await page.keyboard.press("Escape");
    await page.keyboard.press("c");
    const box = await boxOf(drawn(page, "G1"));
    await page.mouse.move(box.x + box.width * 0.3, box.y + box.height * 0.3);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.46, box.y + box.height * 0.7, { steps: 6 });
    await picture(page, "03-architect-cutting");
    await drawn(page, "W1").waitFor();
    await page
      .getByRole("region", { name: "Notes, as you draw" })
      .getByText(/\bW1\b/)
      .first()
      .waitFor();
    await page.mouse.up();
    await page.getByLabel("Width, m").waitFor();
    await picture(page, "03-architect-drawn");
    expect(await seriousFindings(page)).toEqual([]);
  });

  it("a move is taken back and drawn again", async () => {
    const { page } = architect;
    await page.locator(".paper").click({ position: { x: 8, y: 8 } });
    await page.keyboard.press("Control+z");
    await expect.poll(() => drawn(page, "W1").count()).toBe(0);
    await page.keyboard.press("Control+Shift+z");
    await expect.poll(() => drawn(page, "W1").count()).toBeGreaterThan(0);
  });

  it("the revision arrives at the engineer and at the owner by itself", async () => {
    await architect.page.getByLabel("What is new in revision A").fill("Two units and one across.");
    await architect.page.getByRole("button", { name: "Send revision A to the engineer" }).click();
    await engineer.page.getByText("Revision A, from Tilda Varrow").waitFor();
    await note(engineer.page, "Does not work").first().waitFor({ timeout: 90_000 }); // its strength is judged first
    await owner.page.getByRole("heading", { level: 1, name: "Chandler's Steps is with the engineer." }).waitFor();
    await picture(engineer.page, "04-engineer-revision-a");
    await picture(owner.page, "04-owner-with-the-engineer", true);
    expect(await seriousFindings(engineer.page)).toEqual([]);
    expect(await seriousFindings(owner.page)).toEqual([]);
  });

  it("the engineer writes on an element, and the architect reads it on sheet 3", async () => {
    const { page } = engineer;
    await drawn(page, "T1").click();
    await page.getByLabel("In your own words").fill("Nothing holds the south end of T1. It has to stand on something.");
    await page.getByRole("button", { name: "Write it on T1" }).click();
    await page.locator(".comment").getByText("Nothing holds the south end of T1.").waitFor();
    await picture(page, "05-engineer-note");
    await turnTo(architect.page, 3);
    const read = await architect.page.locator(".comment").getByText("Nothing holds the south end of T1.").innerText();
    expect(read).toBe("Nothing holds the south end of T1. It has to stand on something.");
  });

  it("a request is declined with a reason, which the engineer reads", async () => {
    const { page } = engineer;
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Ask for a change", exact: true }).click();
    await pressPost(page, 14);
    await page.getByLabel("What is asked, in your own words").fill("One post under the south end of T1.");
    await page.getByRole("button", { name: "Send the request to the architect" }).click();
    const asked = architect.page.getByRole("region", { name: "Change request 1" });
    await asked.getByRole("button", { name: "Decline, with a reason" }).click();
    await asked.getByLabel("Why not").fill("One post stands in the way and the other side hangs.");
    await asked.getByRole("button", { name: "Decline it so" }).click();
    await page.getByText("Change request 1, declined by Tilda Varrow").click();
    expect(await page.getByText("One post stands in the way and the other side hangs.").isVisible()).toBe(true);
  });

  it("the engineer asks for two posts, drawn on the revision and not in the scheme", async () => {
    const { page } = engineer;
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Ask for a change", exact: true }).click();
    await pressPost(page, 14);
    await pressPost(page, -14);
    await page.getByText(/P1 set, .*P2 set/).waitFor();
    await picture(page, "06-engineer-asks");
    await page
      .getByLabel("What is asked, in your own words")
      .fill("Two posts under the south end of T1, on pads of their own.");
    await page.getByRole("button", { name: "Send the request to the architect" }).click();
    await architect.page.getByRole("region", { name: "Change request 2" }).waitFor();
    await picture(architect.page, "06-architect-asked");
    expect(await seriousFindings(architect.page)).toEqual([]);
  });

  it("the owner agrees on a phone to what the two posts cost, and the architect reads it", async () => {
    const { page } = owner;
    await page.getByRole("heading", { level: 1, name: "Chandler's Steps is with the owner." }).waitFor();
    await page.getByText(/It adds \$\d,\d{3} to the premium/).waitFor();
    await picture(page, "06-owner-asked", true);
    expect(await seriousFindings(page)).toEqual([]);
    await page
      .getByRole("button", { name: /^Agree to \$/ })
      .first()
      .click();
    await page.getByRole("heading", { level: 1, name: "Chandler's Steps is with the architect." }).waitFor();
    const asked = architect.page.getByRole("region", { name: "Change request 2" });
    await asked.getByText(/^Jory Pellan agreed to \$/).waitFor();
    await picture(architect.page, "06-architect-agreed");
  });

  it("the architect takes the posts in and sends revision B", async () => {
    const { page } = architect;
    await page.getByRole("button", { name: "Take it in" }).click();
    await page.getByText("Change request 2, taken in by Tilda Varrow").waitFor();
    await turnTo(page, 1);
    await drawn(page, "P1").waitFor();
    await drawn(page, "P2").waitFor();
    await expect.poll(() => page.locator(".note").filter({ hasText: "T1 tips over" }).count()).toBe(0);
    await picture(page, "07-architect-took-in");
    await page.getByRole("button", { name: "Send revision B to the engineer" }).click();
    await engineer.page.getByText("Revision B, from Tilda Varrow").waitFor();
  });

  it("only the two stamps that send a scheme back can be pressed", async () => {
    const { page } = engineer;
    await page.getByRole("button", { name: "Stamp revision B" }).click();
    expect((await boxOf(page.getByRole("form", { name: "Stamp for revision B" }))).width).toBeGreaterThan(300);
    expect(await page.getByRole("radio", { name: /No exceptions taken/ }).getAttribute("aria-disabled")).toBe("true");
    expect(await page.getByRole("radio", { name: /Make corrections noted/ }).getAttribute("aria-disabled")).toBe(
      "true",
    );
    await page.getByRole("radio", { name: /Revise and resubmit/ }).check();
    await page.getByLabel("What is to be done").fill("Show what holds T1 against sliding on its posts.");
    await picture(page, "08-engineer-stamping");
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByLabel("Your password, once more", { exact: true }).fill(passwordOf("engineer"));
    await page.getByRole("button", { name: "Press the stamp" }).click();
    await page.locator(".stamp-place").getByText("Revise and resubmit").waitFor();
    await picture(page, "08-engineer-stamped");
  });

  it("sheet 4 clouds what B changed over A, and tells it in words with verdict, force and premium before and after", async () => {
    const { page } = architect;
    await turnTo(page, 4);
    const title = page.getByRole("heading", { name: /^Sheet 4, Compare, .*, revisions A and B$/ });
    await title.waitFor({ state: "attached" });
    await page.getByText(/^P1 and P2 set/).waitFor();
    const told = await page.locator(".notes-scroll [data-note-number]").allInnerTexts();
    expect(told.length).toBeGreaterThan(0);
    expect(await numbersClouded(page)).toEqual([...new Set(told)].toSorted());
    await picture(page, "11-architect-compare");
    expect(await seriousFindings(page)).toEqual([]);

    await page.keyboard.down("b");
    await page.getByRole("group", { name: "Drawing, revision A alone" }).waitFor();
    expect(await drawn(page, "P1").count()).toBe(0);
    await page.keyboard.up("b");
    await drawn(page, "P1").waitFor();

    await page.keyboard.press("l");
    const table = page.locator(".change-table table").first();
    const cellsOf = async (row: Locator) => (await row.locator("th, td").allInnerTexts()).map((words) => words.trim());
    const heads = ["No.", "Change", "Verdict", "Force in A", "Force in B", "Premium in A", "Premium in B"];
    expect(await cellsOf(table.locator("thead tr"))).toEqual(heads);
    const posts = await cellsOf(table.locator("tbody tr").filter({ hasText: "P1 and P2 set" }));
    expect(posts.slice(3)).toEqual([
      "none",
      expect.stringMatching(/^\d+ kN$/),
      "$0",
      expect.stringMatching(/^\$\d,\d{3}$/),
    ]);
    await picture(page, "11-architect-change-table");
    expect(await seriousFindings(page)).toEqual([]);
    await page.keyboard.press("Escape");
  });

  it("the owner's page on a phone says where it stands now", async () => {
    const { page } = owner;
    await page.getByRole("heading", { level: 1, name: "Chandler's Steps goes back to the architect." }).waitFor();
    await page.getByText("Show what holds T1 against sliding on its posts.").first().waitFor();
    await picture(page, "09-owner-stamped", true);
    expect(await page.locator("main").innerText()).not.toMatch(/\bkN\b/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(phone.width);
    expect(await seriousFindings(page)).toEqual([]);
  });

  it("the record shows every act in order, without gaps", async () => {
    const { page } = architect;
    await turnTo(page, 7);
    await page.getByText("Revision B stamped: Revise and resubmit.").waitFor();
    const told = await page.locator("[data-entry] .record-what").allInnerTexts();
    const numbers = await page.locator("[data-entry] th").allInnerTexts();
    expect(numbers.map(Number)).toEqual(numbers.map((_, at) => at + 1));
    expect(told.map(withoutSign).filter((words) => /Revision|request|Note/.test(words))).toEqual([
      expect.stringMatching(/^Revision A sent: Two units and one across\./),
      expect.stringMatching(/^Revision A: does not work/),
      expect.stringMatching(/^Note on T1: Nothing holds the south end/),
      expect.stringMatching(/^Change request 1: One post under the south end/),
      expect.stringMatching(/^Change request 1 declined: One post stands in the way/),
      expect.stringMatching(/^Change request 2: Two posts under the south end/),
      expect.stringMatching(/^Change request 2 taken in\./),
      expect.stringMatching(/^Revision B sent\./),
      expect.stringMatching(/^Revision B: does not work/),
      "Revision B stamped: Revise and resubmit.",
    ]);
    await picture(page, "10-record");
    expect(await seriousFindings(page)).toEqual([]);
    // Printed, its margin comes after it and covers nothing of it.
    await page.emulateMedia({ media: "print" });
    const [table, margin] = [await boxOf(page.locator(".record table")), await boxOf(page.locator(".sheet-margin"))];
    expect(margin.y).toBeGreaterThanOrEqual(table.y + table.height);
    await page.emulateMedia({ media: "screen" });
  });

  it("no page was fetched again, broke the content-security policy or wrote an error", async () => {
    for (const { page, faults } of [architect, engineer, owner]) {
      expect(await page.evaluate(() => Reflect.get(globalThis, "neverReloaded"))).toBe(true);
      expect(await page.getByText(cautionLine).first().isVisible()).toBe(true);
      expect(faults).toEqual([]);
    }
  });
});

/** The sentence of an entry without the letter in its triangle. */
const withoutSign = (words: string): string => words.replace(/^[A-Z]\s*\n/, "").trim();

/** The numbers of the changes that clouds stand round on the drawing. */
async function numbersClouded(page: Page): Promise<string[]> {
  const numbers = await page
    .locator(".cloud-marks [data-numbers]")
    .evaluateAll((clouds) => clouds.flatMap((cloud) => cloud.getAttribute("data-numbers")?.split(" ") ?? []));
  return [...new Set(numbers)].toSorted();
}

/** An element on the elevation of the page, by its label. */
const drawn = (page: Page, tag: string): Locator =>
  page
    .getByRole("tree", { name: "south elevation" })
    .getByRole("treeitem", { name: new RegExp(`(^|door |window |post )${tag}\\b`, "i") })
    .first();

/** Presses the post tool on T1, px from its left side, or from its right where negative. */
async function pressPost(page: Page, fromSidePx: number): Promise<void> {
  const box = await boxOf(drawn(page, "T1"));
  await page.keyboard.press("p");
  await page.mouse.click(
    fromSidePx > 0 ? box.x + fromSidePx : box.x + box.width + fromSidePx,
    box.y + box.height * 0.8,
  );
}

const note = (page: Page, verdict: string): Locator => page.locator(".note h3").filter({ hasText: verdict });

async function boxOf(place: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await place.boundingBox();
  if (box === null) throw new Error("the element is not on the paper");
  return box;
}

const expectField = (page: Page, label: string, value: string) =>
  expect.poll(() => page.getByLabel(label).inputValue()).toBe(value);

const turnTo = (page: Page, sheet: number) =>
  page
    .getByRole("navigation", { name: "Sheets" })
    .getByRole("button", { name: new RegExp(`^${sheet}`) })
    .click();
