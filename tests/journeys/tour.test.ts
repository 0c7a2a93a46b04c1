import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { goTo, pointerPresses, signInByKeys, watchPointer } from "./support/by-keys.ts";
import { passwordOf } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

describe("by keyboard alone, the first steps", () => {
  let service: OpenService;
  let browser: Browser;
  let architect: WatchedPage;
  let engineer: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    [architect, engineer] = await Promise.all([watchedPage(browser), watchedPage(browser)]);
    await Promise.all([watchPointer(architect.page), watchPointer(engineer.page)]);
    await signInByKeys(architect.page, service.origin, "architect");
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  it("lead from an empty sheet over a stack, a shift, a mark and a way back to sending", async () => {
    const { page, faults } = architect;
    await step(page, 1, "Set the first container").waitFor();
    await picture(page, "31-tour-begins");
    expect(await seriousFindings(page)).toEqual([]);
    await page.keyboard.press("s");
    await page.keyboard.press("Enter");

    await step(page, 2, "Stack another on it").waitFor();
    await page.keyboard.press("s");
    // The typed twin of holding it over the first: its level is the height of a 40 ft high cube, 2.896 m (ISO 668).
    await page.getByLabel("Centre, east, m").fill("0");
    await page.getByLabel("Level, m").fill("2.896");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Set .* here/ }).press("Enter");

    await step(page, 3, "Shift the upper one").waitFor();
    await page.keyboard.press("Escape");
    await chooseUpper(page);
    for (let times = 0; times < 4; times += 1) await page.keyboard.press("Shift+ArrowRight");

    await step(page, 4, "Read the mark").waitFor();
    await picture(page, "31-tour-mark");
    await page.keyboard.press("n");

    await step(page, 5, "Take the move back").waitFor();
    await page.keyboard.press("Control+z");

    await step(page, 6, "Send it").waitFor();
    await picture(page, "31-tour-send");
    await page.getByRole("button", { name: "I know the way now" }).press("Enter");
    await expect.poll(() => page.getByText(/^First steps/).count()).toBe(0);
    expect(faults).toEqual([]);
  });

  it("are remembered: they do not come back", async () => {
    const { page } = architect;
    await page.reload();
    await page
      .getByText(/Notes, as you draw/i)
      .first()
      .waitFor();
    expect(await page.getByText(/^First steps/).count()).toBe(0);
  });

  it("are followed by whatever else is drawn: sized, turned, seated, tied, locked and posted by keys, and taken back", async () => {
    const { page, faults } = architect;
    await page.keyboard.press("s");
    await retype(page, "Centre, east, m", "0");
    await retype(page, "Centre, north, m", "2.438"); // wall to wall with the first: a unit is 2.438 m wide (ISO 668)
    await goTo(page, page.getByRole("button", { name: /^Set G2 here/ }));
    await page.keyboard.press("Enter");
    await thing(page, /^G2, /).waitFor({ state: "attached" });

    await choose(page, "F1");
    await page.keyboard.press("[");
    await caption(page, "F1 · 40 ft, 8 ft 6 in high").waitFor();
    await page.keyboard.press("]");
    await caption(page, "F1 · 40 ft high cube").waitFor();
    await page.keyboard.press("t");
    await expect.poll(() => page.getByLabel("Turn, °").inputValue()).toBe("90");

    await addTo(page, "F1", "Seat", /^Set seats at all 8/); // its two rails cross four rails of the two below
    await thing(page, /^seat S8 under F1/).waitFor({ state: "attached" });
    await addTo(page, "G1", "Tie", /^Tie G1 to G2/);
    await caption(page, "TI1 · tie between G1 and G2").waitFor();
    await addTo(page, "G1", "Lock", /^Join all 4 corners/);
    await thing(page, /^hold-down L1 under G1/).waitFor({ state: "attached" });

    await choose(page, "F1");
    await page.keyboard.press("p");
    await retype(page, "North, m", "-4.5");
    await thing(page, /^post P1/).waitFor({ state: "attached" });
    await choose(page, "B1");
    await retype(page, "Depth, m", "0.6");
    await expect.poll(() => page.getByLabel("Depth, m").inputValue()).toBe("0.600");
    await picture(page, "31-keys-furnished");

    await page.keyboard.press("Escape");
    const undone = ["pad", "post and pad", "locks", "tie", "seats", "turn", "size", "size", "unit"];
    for (const _ of undone) await page.keyboard.press("Control+z");
    await expect.poll(() => thing(page, /^G2, /).count()).toBe(0);
    expect(await thing(page, /^F1, /).count()).toBe(1);
    expect(await thing(page, /^(seat|tie|hold-down|post)/).count()).toBe(0);
    expect(await pointerPresses(page)).toBe(0);
    expect(faults).toEqual([]);
  });

  it("go on to a revision that is sent, written on and stamped, and no pointer is pressed on the whole way", async () => {
    const { page } = architect;
    await goTo(page, page.getByLabel("What is new in revision A"));
    await page.keyboard.type("One stands on the other.");
    await goTo(page, page.getByRole("button", { name: "Send revision A to the engineer" }));
    await page.keyboard.press("Enter");
    await signInByKeys(engineer.page, service.origin, "engineer");
    await engineer.page.getByText("Revision A, from Tilda Varrow").waitFor();
    await writeOnFirstThing(engineer.page, "Say what holds the two together.");
    await stampBack(engineer.page, "Draw the locks between the two.");
    await picture(engineer.page, "31-keys-stamped");
    expect(await pointerPresses(page)).toBe(0);
    expect(await pointerPresses(engineer.page)).toBe(0);
    expect([...architect.faults, ...engineer.faults]).toEqual([]);
  });
});

const thing = (page: Page, name: RegExp): Locator => page.getByRole("treeitem", { name }).first();

const caption = (page: Page, words: string): Locator =>
  page.locator(".slip .caption").getByText(words, { exact: true });

/** Goes to a field, writes over what stands in it, and enters it. */
async function retype(page: Page, label: string, value: string): Promise<void> {
  await goTo(page, page.getByLabel(label));
  await page.keyboard.press("Control+a");
  await page.keyboard.type(value);
  await page.keyboard.press("Enter");
}

/** The full stop chooses one thing after the other, until it is the one with this label. */
async function choose(page: Page, tag: string): Promise<void> {
  await page.keyboard.press("Escape"); // out of a field, and whatever is in hand let go
  const chosen = page.locator(".slip .caption").getByText(new RegExp(`^${tag} ·`));
  for (let times = 0; times < 60; times += 1) {
    await page.keyboard.press(".");
    if ((await chosen.count()) > 0) return;
  }
  throw new Error(`${tag} was not among what can be chosen`);
}

/** Adds to a thing what is offered to it: E goes to the offers. */
async function addTo(page: Page, tag: string, what: string, command: RegExp): Promise<void> {
  await choose(page, tag);
  await page.keyboard.press("e");
  await goTo(page, page.getByRole("group", { name: "Add" }).getByRole("button", { name: what, exact: true }));
  await page.keyboard.press("Enter");
  await goTo(page, page.getByRole("button", { name: command }));
  await page.keyboard.press("Enter");
}

async function writeOnFirstThing(page: Page, words: string): Promise<void> {
  await page.keyboard.press(".");
  await goTo(page, page.getByLabel("In your own words").first());
  await page.keyboard.type(words);
  await goTo(page, page.getByRole("button", { name: /^Write it on/ }));
  await page.keyboard.press("Enter");
  await page.locator(".comment").getByText(words).waitFor();
}

/** Stamps revision A to go back to the architect, once it is checked. */
async function stampBack(page: Page, words: string): Promise<void> {
  const stamp = page.getByRole("button", { name: "Stamp revision A", exact: true });
  await expect.poll(() => stamp.getAttribute("aria-disabled"), { timeout: 60_000 }).not.toBe("true");
  await goTo(page, stamp);
  await page.keyboard.press("Enter");
  await goTo(page, page.getByRole("radio").first());
  const back = page.getByRole("radio", { name: /Revise and resubmit/ });
  for (let n = 0; n < 4 && !(await back.isChecked()); n += 1) await page.keyboard.press("ArrowDown");
  await goTo(page, page.getByLabel("What is to be done"));
  await page.keyboard.type(words);
  await goTo(page, page.getByLabel("Your password, once more", { exact: true }));
  await page.keyboard.type(passwordOf("engineer"));
  await goTo(page, page.getByRole("button", { name: "Press the stamp" }));
  await page.keyboard.press("Enter");
  await page.locator(".stamp-in-hand").waitFor({ state: "detached" }); // pressed, it is an impression
  await page.locator(".stamp-place").getByText("Revise and resubmit").waitFor();
}

const step = (page: Page, number: number, heading: string): Locator =>
  page.getByRole("region", { name: `First steps, ${number} of 6` }).getByRole("heading", { name: heading });

/** The full stop chooses one thing after the other; the upper unit is the one whose level is not zero. */
async function chooseUpper(page: Page): Promise<void> {
  for (let times = 0; times < 14; times += 1) {
    await page.keyboard.press(".");
    const level = page.getByLabel("Level, m");
    if ((await level.count()) > 0 && (await level.inputValue()) === "2.896") return;
  }
  throw new Error("the upper container was not among what can be chosen");
}
