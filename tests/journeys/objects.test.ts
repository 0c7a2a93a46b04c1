import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./support/browser.ts";
import { fingersOn, middleOf } from "./support/by-touch.ts";
import { faintOnPaper, itemsRead, lostWords, whatMoves } from "./support/for-everyone.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { signIn } from "./support/sign-in.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

/** One architect furnishes a small scheme with everything that can be added, mostly by keyboard. */
describe("what is added to a scheme is drawn, stated, copied and taken away", () => {
  let service: OpenService;
  let browser: Browser;
  let desk: WatchedPage;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    desk = await watchedPage(browser);
    await signIn(desk.page, service.origin, "architect");
  });

  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  afterEach(async ({ task }) => {
    if (task.result?.state !== "fail") return;
    await picture(desk.page, "failed-objects");
    if (desk.faults.length > 0) console.error(desk.faults);
  });

  it("two units side by side and one turned across them are set by typing", async () => {
    const { page } = desk;
    await page.getByRole("heading", { name: "Set the first container here" }).waitFor();
    await set(page, "G1", {});
    await set(page, "G2", { "Centre, east, m": "0", "Centre, north, m": "2.438" });
    await set(page, "F1", {
      "Centre, east, m": "0",
      "Centre, north, m": "1.219",
      "Level, m": "2.896",
      "Turn, °": "90",
    });
    // Turned across two units of 2.438 m the middle of F1 lies over the joint between them.
    await expectField(page, "Centre, north, m", "1.219");
  });

  it("seats are set at all eight crossings in one act, and a seat is stated by typing", async () => {
    const { page } = desk;
    await add(page, "Seat");
    await page.getByRole("button", { name: "Set seats at all 8" }).click();
    const seat = item(page, /^seat S1 under F1 on G1, packing 18.5 mm/);
    await seat.waitFor({ state: "attached" });
    await choose(page, "S1 · seat under F1 on G1");
    await page.getByLabel("Packing, mm").fill("24");
    await page.keyboard.press("Enter");
    await item(page, /^seat S1 under F1 on G1, packing 24 mm/).waitFor({ state: "attached" });
    await page.getByLabel("Packing, mm").fill("0");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.getByText("At least 0.001 mm.").count()).toBe(1);
    await picture(page, "30-seats");
  });

  it("units are tied, locked and loaded from the unit touched", async () => {
    const { page } = desk;
    await choose(page, "G1 · 40 ft high cube");
    await add(page, "Tie");
    await page.getByRole("button", { name: "Tie G1 to G2" }).click();
    await page.getByText("TI1 · tie between G1 and G2").waitFor();
    await choose(page, "G1 · 40 ft high cube");
    await add(page, "Lock");
    await page.getByRole("button", { name: "Join all 4 corners" }).click();
    await item(page, /^hold-down L1 under G1/).waitFor({ state: "attached" });
    await choose(page, "G1 · 40 ft high cube");
    await add(page, "Load");
    await page.getByLabel("Down, kN").fill("12,5");
    await page.getByLabel("What it is").fill("Water tank");
    await page.getByRole("button", { name: "Put it on G1" }).click();
    await item(page, /^load Q1, Water tank, 12.5 kN on the floor of G1/).waitFor({ state: "attached" });
    expect(
      await page
        .getByRole("tree", { name: /^Plan/ })
        .getByRole("treeitem", { name: /^hold-down/ })
        .count(),
    ).toBe(4);
    await picture(page, "31-joined");
  });

  it("an opening is framed by sections of the catalogue, staged, and drawn wider by its handle", async () => {
    const { page } = desk;
    await choose(page, "G1 · 40 ft high cube");
    await page.keyboard.press("c");
    await page.getByLabel("Along, m").fill("1.5");
    await page.getByRole("button", { name: "Cut it in G1" }).click();
    await page.getByText("D1 · door in G1").waitFor();
    await page.getByLabel("Jambs").selectOption("HSS4x3x1/4");
    await expect.poll(() => page.getByLabel("Header").inputValue()).toBe("HSS4x3x1/4");
    await page
      .getByRole("region", { name: "D1 · door in G1" })
      .getByLabel("Cut", { exact: true })
      .selectOption("after shoring");
    await item(page, /door D1, 1\.50 m wide, cut after shoring/).waitFor({ state: "attached" });
    const handle = page.locator('.elevation [data-handle="1,0"]').first();
    const box = await boxOf(handle);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 40, box.y + box.height / 2, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => page.getByLabel("Width, m").inputValue()).not.toBe("1.500");
    await picture(page, "32-framed");
    expect(await seriousFindings(page)).toEqual([]);
  });

  it("a beam is set by typing, and by two presses", async () => {
    const { page } = desk;
    await choose(page, "F1 · 40 ft high cube");
    await add(page, "Beam");
    await page.getByRole("button", { name: "Set the beam there" }).click();
    await page.getByText("BM1 · W8x31").waitFor();
    await choose(page, "F1 · 40 ft high cube");
    await add(page, "Beam");
    await page.getByRole("button", { name: "Draw it by two presses" }).click();
    await page.getByText("A beam, in hand").waitFor();
    const paper = await boxOf(page.getByRole("tree", { name: /^Plan/ }));
    await page.mouse.click(paper.x + paper.width * 0.2, paper.y + paper.height * 0.9);
    await page.mouse.move(paper.x + paper.width * 0.8, paper.y + paper.height * 0.9);
    await page.mouse.click(paper.x + paper.width * 0.8, paper.y + paper.height * 0.9);
    await page.getByText("BM2 · W8x31").waitFor();
    expect(await page.getByRole("tree", { name: /^Plan/ }).getByRole("treeitem", { name: /^beam/ }).count()).toBe(2);
    await picture(page, "33-beams");
  });

  it("several things are chosen by key, copied with what is in and between them, and mirrored back", async () => {
    const { page } = desk;
    await choose(page, "G1 · 40 ft high cube");
    await page.keyboard.press("Control+a");
    await page.getByText("3 things chosen").waitFor();
    await add(page, "Lay out");
    await page.getByLabel("East, m").fill("20");
    await page.getByRole("button", { name: "Copy these 3" }).click();
    await item(page, /^G3, 40 ft container/).waitFor({ state: "attached" });
    // Copied along: the tie between the two, the door, and eight seats beside the first eight.
    await item(page, /^seat S16 under F2/).waitFor({ state: "attached" });
    await item(page, /door D2, /).waitFor({ state: "attached" });
    await picture(page, "35-copied");
    await page.getByLabel("Lay out").selectOption("mirror");
    await page.getByLabel("Draw", { exact: true }).selectOption("these themselves");
    await page.getByRole("button", { name: "Mirror these 3" }).click();
    await picture(page, "36-mirrored");
    // Mirrored about a north–south line, doors that looked east look west.
    await choose(page, "G3 · 40 ft high cube");
    await expectField(page, "Turn, °", "180");
    await page.keyboard.press("Escape");
    await page.locator(".paper").click({ position: { x: 6, y: 6 } });
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    await expect.poll(() => item(page, /^G3, 40 ft container/).count()).toBe(0);
    // The same by the clipboard: laid beside what stands there, in one move.
    await page.keyboard.press("Control+a");
    await page.keyboard.press("Control+c");
    await page.keyboard.press("Control+v");
    await item(page, /^seat S16 under F2/).waitFor({ state: "attached" });
    await page.keyboard.press("Control+z");
    await expect.poll(() => item(page, /^G3, 40 ft container/).count()).toBe(0);
  });

  it("before a unit goes, what hangs on it is named; confirmed, all of it goes in one act", async () => {
    const { page } = desk;
    await choose(page, "F1 · 40 ft high cube");
    await page.keyboard.press("Delete");
    const asked = page.getByRole("region", { name: "Take F1 away?" });
    await asked.getByText(/^Seat S1, .* and seat S8 hang on it and would go too/).waitFor();
    await picture(page, "37-asked");
    await asked.getByRole("button", { name: "Keep all" }).click();
    await item(page, /^F1, 40 ft container/).waitFor({ state: "attached" });
    await page.keyboard.press("Delete");
    await asked.waitFor();
    await page.keyboard.press("Delete");
    await expect.poll(() => item(page, /^F1, 40 ft container/).count()).toBe(0);
    expect(await item(page, /^seat/).count()).toBe(0);
    await page.keyboard.press("Control+z");
    await item(page, /^seat S8 under F1/).waitFor({ state: "attached" });
    expect(desk.faults).toEqual([]);
  });

  it("the places where fittings land on fittings are listed, and a press moves the unit there", async () => {
    const { page } = desk;
    await set(page, "G3", { "Centre, east, m": "0", "Centre, north, m": "20", "Level, m": "0", "Turn, °": "0" });
    await set(page, "F2", { "Centre, east, m": "0.32", "Centre, north, m": "20", "Level, m": "2.896", "Turn, °": "0" });
    await page.getByText(/places? where fittings land on fittings/).click();
    await picture(page, "39-alignments");
    await page.getByRole("button", { name: "Land four fittings on G3, a lock enters: move 0.320 m west" }).click();
    await expectField(page, "Centre, east, m", "0.000");
    expect(desk.faults).toEqual([]);
  });

  it("the design basis is stated on the settings of the project, and nonsense is refused at its place", async () => {
    const { page } = desk;
    await page.goto(`${service.origin}/projects/${service.projectId}/settings`);
    await page.getByRole("button", { name: "State the hazards of the site" }).click();
    await page.getByLabel("Basic speed, m/s").fill("900");
    await page.getByRole("button", { name: "Take this as the basis" }).click();
    await page.getByText("At most 150 m/s.").waitFor();
    await page.getByLabel("Basic speed, m/s").fill("51.4");
    await page.getByRole("button", { name: "Take this as the basis" }).click();
    await expect.poll(() => page.getByRole("button", { name: "Take the hazards off" }).count()).toBe(1);
    await picture(page, "40-basis", true);
    expect(await seriousFindings(page)).toEqual([]);
    await page.goto(`${service.origin}/projects/${service.projectId}/sheet/1`);
    await item(page, /^G1, 40 ft container/).waitFor({ state: "attached" });
  });

  it("a screen reader is told of everything on the elevation, each by a name of its own", async () => {
    const { page } = desk;
    const read = await itemsRead(page, "south elevation");
    expect(read).toHaveLength(
      await page.getByRole("tree", { name: "south elevation" }).locator("[role=treeitem]").count(),
    );
    expect(read.length).toBeGreaterThan(8);
    expect(new Set(read).size).toBe(read.length);
    expect(read).toContainEqual(expect.stringMatching(/^G1, 40 ft container, ground level, /));
    expect(read).toContainEqual(expect.stringMatching(/^seat S1 under F1 on G1, packing 24 mm/));
  });

  it("in the colours of the system lettering and lines stand out, and nothing moves for who asks for no motion", async () => {
    const { page } = desk;
    await page.emulateMedia({ forcedColors: "active" });
    await picture(page, "41-forced-colours");
    expect(await faintOnPaper(page)).toEqual([]);
    expect(await lostWords(page)).toEqual([]);
    await page.emulateMedia({ forcedColors: "none", reducedMotion: "reduce" });
    expect(await whatMoves(page)).toEqual([]);
    await page.emulateMedia({ reducedMotion: "no-preference" });
    expect(await whatMoves(page)).not.toEqual([]);
  });

  it("read at twice its size the sheet keeps its tools and every note, the margin under the drawing", async () => {
    const { page } = desk;
    const noted = () => page.locator("#notes .note h3").allInnerTexts();
    const before = await noted();
    await page.setViewportSize({ width: 720, height: 450 }); // 1440 × 900 at 200 %
    const [field, notes] = [await boxOf(page.getByRole("main")), await boxOf(page.locator("#notes"))];
    expect(notes.y).toBeGreaterThanOrEqual(field.y + field.height);
    expect(await noted()).toEqual(before);
    for (const tool of ["Stack", "Shift", "Turn", "Cut", "Open wall", "Post"])
      expect(
        await page
          .getByRole("button", { name: new RegExp(`^${tool}`) })
          .first()
          .isVisible(),
        tool,
      ).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(720);
    await picture(page, "42-twice-its-size", true);
    await page.setViewportSize({ width: 1440, height: 900 });
  });

  it("by touch a tap chooses, a drag moves and a pinch looks closer", async () => {
    const { page } = desk;
    const finger = await fingersOn(page);
    await page.keyboard.press("Escape");
    const unit = page
      .getByRole("tree", { name: "south elevation" })
      .getByRole("treeitem", { name: /^G1, 40 ft container/ });
    const at = await middleOf(unit);
    await finger.tap(at);
    await page.locator(".slip .caption").getByText("G1 · 40 ft high cube").waitFor();
    const east = await page.getByLabel("Centre, east, m").inputValue();
    await finger.drag(at, { x: at.x - 90, y: at.y });
    await expect.poll(() => page.getByLabel("Centre, east, m").inputValue()).not.toBe(east);
    const scale = () =>
      page
        .locator(".paper")
        .getByText(/^1:\d+ · /)
        .first()
        .textContent();
    const plain = await scale();
    await finger.pinch(at, 60, 240);
    await expect.poll(scale).not.toBe(plain);
    await picture(page, "43-pinched");
    await page.keyboard.press("0");
    await expect.poll(scale).toBe(plain);
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.getByLabel("Centre, east, m").inputValue()).toBe(east);
    expect(desk.faults).toEqual([]);
  });

  it("on a phone the drawing shows what was added", async () => {
    const { page } = desk;
    await page.setViewportSize({ width: 390, height: 844 });
    await picture(page, "38-phone", true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});

/** Sets a container by key, its place typed; fields not named keep what they show. */
async function set(page: Page, tag: string, fields: Record<string, string>): Promise<void> {
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await page.keyboard.press("s");
  for (const [label, value] of Object.entries(fields)) await page.getByLabel(label).fill(value);
  if (Object.keys(fields).length > 0) await page.getByRole("button", { name: "Hold it there" }).click();
  await page.getByRole("button", { name: `Set ${tag} here` }).click();
  await page.getByText(`${tag} · 40 ft high cube`).waitFor();
}

/** Puts the focus on a thing of the drawing, as keys do, until the slip is of it. */
async function choose(page: Page, heading: string): Promise<void> {
  await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await item(page, new RegExp(`^(seat )?${heading.split(" ")[0] ?? ""}[ ,]`)).focus();
  await page.locator(".slip .caption").getByText(heading, { exact: true }).waitFor();
}

const add = (page: Page, what: string) =>
  page.getByRole("group", { name: "Add" }).getByRole("button", { name: what, exact: true }).click();

const item = (page: Page, name: RegExp): Locator => page.getByRole("treeitem", { name }).first();

async function boxOf(place: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await place.boundingBox();
  if (box === null) throw new Error("the element is not on the paper");
  return box;
}

const expectField = (page: Page, label: string, value: string) =>
  expect.poll(() => page.getByLabel(label).inputValue()).toBe(value);
