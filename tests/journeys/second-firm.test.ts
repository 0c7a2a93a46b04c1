import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { cautionLine } from "@cornerway/schema";
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from "vitest";
import { lettersIn, linkIn } from "../../apps/api/test/support/letters.ts";
import { freshDatabase, type FreshDatabase } from "../support/fresh-database.ts";
import { startProcess, type ServiceProcess } from "../two-process/service-process.ts";
import { openBrowser } from "./support/browser.ts";
import type {} from "./support/pages.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { watchedPage, type WatchedPage } from "./support/watched-page.ts";

const phone = { width: 390, height: 844 };
const tablet = { width: 1024, height: 768 };

/** A firm that nobody knows yet, from the one-time link on an empty database to an engineer confirmed by the owner. */
describe("a new firm sets itself up", () => {
  let database: FreshDatabase;
  let service: ServiceProcess;
  let browser: Browser;
  const mailFolder = mkdtempSync(path.join(os.tmpdir(), "cornerway-journey-mail-"));
  const people = new Map<string, WatchedPage>();
  const links = new Map<string, string>();

  const pageOf = (who: string): Page => {
    const found = people.get(who);
    if (found === undefined) throw new Error(`${who} has no page`);
    return found.page;
  };

  beforeAll(async () => {
    database = await freshDatabase();
    service = await startProcess(database.serviceUrl, {
      WEB_ROOT: inject("pagesFolder"),
      MAIL_FOLDER: mailFolder,
      SECRETS_KEY: "5c".repeat(32),
    });
    browser = await openBrowser();
    for (const who of ["administrator", "owner", "architect", "engineer"])
      people.set(who, await watchedPage(browser, who === "owner" ? phone : undefined));
  });

  afterAll(async () => {
    await browser?.close();
    service?.process.kill("SIGTERM");
    await service?.ended;
    await database?.drop();
    rmSync(mailFolder, { recursive: true, force: true });
  });

  afterEach(async ({ task }) => {
    if (task.result?.state !== "fail") return;
    for (const [who, { page, faults }] of people) {
      await picture(page, `failed-${who}`);
      if (faults.length > 0) console.error(who, faults);
    }
  });

  async function look(page: Page, name: string): Promise<void> {
    await page.getByText(cautionLine).first().waitFor();
    await picture(page, name, true);
    expect(await seriousFindings(page), name).toEqual([]);
  }

  /** The page of a link shows what it is for, and the address holds its secret no longer. */
  async function openLink(page: Page, link: string): Promise<void> {
    await page.goto(service.origin + link);
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(new URL(page.url()).hash).toBe("");
    expect(await page.evaluate(() => document.referrer + location.href + history.length)).not.toContain(
      link.split("#")[1] ?? "",
    );
  }

  it("the service told one link when it started on an empty database, and the first one becomes administrator by it", async () => {
    const told = /^first administrator, once: (\S+)$/m;
    await expect.poll(() => told.exec(service.output())?.[1], { timeout: 30_000 }).toBeDefined();
    const link = new URL(told.exec(service.output())?.[1] ?? "");
    expect(link.origin).toBe(service.origin);
    const page = pageOf("administrator");
    await openLink(page, link.pathname + link.hash);
    await page.getByRole("heading", { name: "Nobody is known here yet. You are the first." }).waitFor();
    await look(page, "60-first-administrator");
    await page.getByLabel("Your name").fill("Runa Feld");
    await page.getByLabel("Address you sign in with").fill("runa@feld.example");
    await page.getByLabel("A password", { exact: true }).fill("runafeld2026");
    await page.getByRole("button", { name: "Become the administrator" }).click();
    await page.getByText("It is mostly your own name or address.").waitFor();
    await look(page, "61-first-administrator-weak-password");
    await page.getByRole("button", { name: "Show it: A password" }).click();
    await page.getByLabel("A password", { exact: true }).fill("seven lanterns by the quay");
    await page.getByRole("button", { name: "Become the administrator" }).click();
    await page.getByRole("heading", { name: "Nothing waits for you, Runa." }).waitFor();
    await page.getByText("There is none yet. Start the first one, then ask people in.").waitFor();
    await look(page, "62-desk-of-administrator");
  });

  it("a project is started and people are asked in; each link is shown once", async () => {
    const page = pageOf("administrator");
    await page.getByRole("link", { name: "Start a project" }).click();
    await page.getByLabel("Name of the project").fill("Rope Walk");
    await page.getByRole("button", { name: "Start it and ask people in" }).click();
    await page.getByText("The place is missing.").waitFor();
    await page.getByLabel("Place", { exact: true }).fill("Rope Walk 3, Fenquill");
    await page.getByLabel("Whom it is built for").fill("Fenquill Boats");
    await look(page, "63-start-a-project");
    await page.getByRole("button", { name: "Start it and ask people in" }).click();
    await page.getByRole("heading", { name: "Rope Walk: who has a part" }).waitFor();
    await page.getByText("Nobody has a part yet.").waitFor();
    await look(page, "64-people-empty");
    for (const role of ["owner", "architect", "engineer"]) {
      await page.getByLabel("Their address").fill(`${role}@feld.example`);
      await page.getByLabel("Their part").selectOption(role);
      await page.getByRole("button", { name: `Ask them in as ${role}` }).click();
      await page.getByText(`A letter with this link is on its way to ${role}@feld.example.`).waitFor();
      const link = new URL(await page.getByRole("textbox", { name: "Link" }).inputValue());
      links.set(role, link.pathname + link.hash);
      expect(linkIn(lettersIn(mailFolder).at(-1))).toBe(links.get(role));
    }
    await page.getByRole("row", { name: /engineer@feld\.example/ }).waitFor();
    await look(page, "65-people-asked-in");
  });

  it("owner, architect and engineer come in by their links", async () => {
    expect(links.size).toBe(3);
    const names = { owner: "Olm Sorrel", architect: "Ivo Maat", engineer: "Ebba Thorne" };
    for (const [role, name] of Object.entries(names)) {
      const page = pageOf(role);
      await openLink(page, links.get(role) ?? "");
      await page.getByRole("heading", { name: "Runa Feld asks you into Rope Walk" }).waitFor();
      await look(page, `66-invitation-${role}`);
      await page.getByLabel("Your name").fill(name);
      await page.getByLabel("A password", { exact: true }).fill("brass keys on a rusty nail");
      await page.getByRole("button", { name: "Come into Rope Walk" }).click();
      await page.waitForURL(/\/projects\/[0-9a-f-]{36}$/);
    }
    await pageOf("architect").getByRole("heading", { name: "Set the first container here" }).waitFor();
    await pageOf("owner").getByRole("heading", { level: 1, name: "Rope Walk is being drawn." }).waitFor();
  });

  it("a link that was used opens nothing any more", async () => {
    const { page, faults } = await watchedPage(browser);
    await page.goto(service.origin + (links.get("owner") ?? ""));
    await page.getByRole("heading", { name: "This link opens nothing any more" }).waitFor();
    await look(page, "67-link-gone");
    // The browser itself tells of the answer 410; nothing else is wrong.
    expect(faults.filter((fault) => !fault.includes("410"))).toEqual([]);
    await page.context().close();
  });

  it("the engineer states a licence, and is confirmed by the owner", async () => {
    const engineer = pageOf("engineer");
    await engineer.goto(`${service.origin}/account`);
    await engineer.getByLabel("Licence number").fill("SE 40117");
    await engineer.getByLabel("Jurisdiction").fill("Province of Fenmark");
    await engineer.getByRole("button", { name: "State the licence" }).click();
    await engineer.getByRole("button", { name: "Take the statement back" }).waitFor();
    await look(engineer, "68-account");
    await engineer.goto(service.origin);
    await engineer.getByRole("link", { name: "Who has a part in Rope Walk" }).click();
    await engineer.getByText("Waits for the owner's word; reads, and does nothing else").waitFor();
    expect(await engineer.getByRole("button", { name: "Ebba Thorne is the engineer" }).count()).toBe(0);
    await look(engineer, "69-people-as-engineer");

    const owner = pageOf("owner");
    await owner.goto(service.origin);
    await owner.getByRole("heading", { name: "Say who the engineer is" }).waitFor();
    await look(owner, "70-desk-of-owner-phone");
    await owner.getByRole("button", { name: "See who it is" }).click();
    await owner.getByText("Licence SE 40117, Province of Fenmark, as stated by Ebba Thorne.").waitFor();
    await look(owner, "71-people-as-owner-phone");
    await owner.getByRole("button", { name: "Ebba Thorne is the engineer" }).click();
    await owner.getByText(/^Confirmed on /).waitFor();
    await engineer.getByText(/^Confirmed on /).waitFor();
    await owner.setViewportSize(tablet);
    await look(owner, "71-people-confirmed-tablet");
  });

  it("the architect loses the sheet at once when the owner takes the part away", async () => {
    const [owner, architect] = [pageOf("owner"), pageOf("architect")];
    await architect.keyboard.press("s");
    await architect.keyboard.press("Enter");
    await architect.getByRole("treeitem", { name: /^G1/ }).first().waitFor({ state: "attached" });
    await owner.getByRole("button", { name: "Take away Ivo Maat as architect" }).click();
    await picture(owner, "72-take-away", true);
    await architect.evaluate(() => Reflect.set(globalThis, "neverReloaded", true));
    await owner.getByRole("button", { name: "Take away Ivo Maat as architect" }).click();
    const from = Date.now();
    await architect.getByRole("heading", { name: "There is no sheet at this address" }).waitFor();
    expect(await architect.evaluate(() => Reflect.get(globalThis, "neverReloaded"))).toBe(true);
    console.log(`the sheet was gone ${Date.now() - from} ms after the owner's press`);
    await look(architect, "73-architect-taken-out");
    const { pathname } = new URL(owner.url());
    await architect.goto(service.origin + pathname);
    await architect.getByRole("heading", { name: "There is no sheet at this address" }).waitFor();
    await look(architect, "74-people-not-yours");
    await architect.goto(service.origin);
    await architect.getByRole("heading", { name: "No sheets are yours yet" }).waitFor();
    await look(architect, "75-desk-without-sheets");
  });

  it("a forgotten password is set anew by a letter, and the other sign-ins end", async () => {
    const engineer = pageOf("engineer");
    const { page, faults } = await watchedPage(browser, phone);
    await page.goto(service.origin);
    await page.getByRole("link", { name: "The password is forgotten" }).click();
    await look(page, "76-forgotten-phone");
    await page.getByLabel("Address you sign in with").fill("engineer@feld.example");
    await page.getByRole("button", { name: "Send me a link" }).click();
    await page.getByRole("heading", { name: "Look at your letters" }).waitFor();
    await look(page, "77-letter-sent-phone");
    await expect.poll(() => lettersIn(mailFolder).at(-1), { timeout: 30_000 }).toContain("Set a new password");
    await openLink(page, linkIn(lettersIn(mailFolder).at(-1)));
    await page.getByRole("heading", { name: "Ebba Thorne, choose a new password" }).waitFor();
    await page.getByLabel("A new password for engineer@feld.example", { exact: true }).fill("two herons on the weir");
    await look(page, "78-new-password-phone");
    await page.getByRole("button", { name: "Set the password and open the desk" }).click();
    await page.getByRole("heading", { level: 1, name: /Ebba\.$/ }).waitFor();
    await page.getByRole("link", { name: "Your account" }).click();
    await page.getByText("You are signed in nowhere else.").waitFor();
    await look(page, "79-account-phone");
    await engineer.goto(`${service.origin}/account`);
    await engineer.getByRole("button", { name: "Open the desk" }).waitFor();
    expect(faults).toEqual([]);
  });

  it("no page broke or breached the content-security policy, and the service logged no link", () => {
    const faults = [...people.values()].flatMap((one) => one.faults);
    // A page that lost its project, or its sign-in, is told so: the browser itself reports those answers.
    expect(faults.filter((fault) => !/status of (401|404)|WebSocket/.test(fault))).toEqual([]);
    const told = service.output();
    for (const link of links.values()) expect(told).not.toContain(link.split("#")[1] ?? "no secret");
  });
});
