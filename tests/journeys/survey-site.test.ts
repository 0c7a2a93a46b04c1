import { randomUUID } from "node:crypto";
import { RevisionSummary, Revision, type Operation } from "@cornerway/schema";
import sharp from "sharp";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heldUnit } from "../../apps/api/test/support/held-unit.ts";
import { openBrowser } from "./support/browser.ts";
import { openService, type OpenService } from "./support/open-service.ts";
import { picture } from "./support/pictures.ts";
import { seriousFindings } from "./support/serious-findings.ts";
import { passwordOf, signIn } from "./support/sign-in.ts";
import { watchedPage } from "./support/watched-page.ts";

/** A container is surveyed, judged and assigned, and one item of the site closed, each on a sheet of another size. */
describe("from the survey of a container to an item closed on site", () => {
  let service: OpenService;
  let browser: Browser;
  let photo: { name: string; mimeType: string; buffer: Buffer };
  const faults: string[] = [];
  const at = (page: string) => `${service.origin}/projects/${service.projectId}/${page}`;

  beforeAll(async () => {
    service = await openService();
    browser = await openBrowser();
    const made = sharp({ create: { width: 400, height: 300, channels: 3, background: "#4a5a4a" } });
    photo = { name: "photo.jpg", mimeType: "image/jpeg", buffer: await made.jpeg().toBuffer() };
  });
  afterAll(async () => {
    await browser?.close();
    await service?.close();
  });

  async function openAs(role: "owner" | "engineer" | "architect", width: number, height: number): Promise<Page> {
    const watched = await watchedPage(browser, { width, height });
    await signIn(watched.page, service.origin, role);
    watched.page.on("close", () => faults.push(...watched.faults));
    return watched.page;
  }

  /** What a program of theirs asks of the service, in the session of the page. */
  async function ask(page: Page, path: string, data?: object) {
    const session: { csrfToken: string } = await (await page.request.get(`${service.origin}/api/session`)).json();
    const headers = { "csrf-token": session.csrfToken, origin: service.origin };
    const url = `${service.origin}/api/projects/${service.projectId}/${path}`;
    const answer = data === undefined ? await page.request.get(url) : await page.request.post(url, { data, headers });
    if (!answer.ok()) throw new Error(`${path}: ${answer.status()} ${await answer.text()}`);
    return answer.json() as Promise<unknown>;
  }

  it("the owner inspects it on a phone, the engineer accepts it, the architect assigns it, and the revision draws what was measured", async () => {
    const owner = await openAs("owner", 390, 844);
    const architect = await openAs("architect", 1440, 900);
    await draw(architect);

    await owner.goto(at("survey"));
    await owner.getByLabel("Number of a container").fill("CSQU 305438 4");
    await owner.getByText("the check digit does not fit; for the rest it would be 3").waitFor();
    await owner.getByLabel("Number of a container").fill("CSQU 305438 3");
    await owner.getByLabel("Type").selectOption("1CC");
    await owner.getByRole("button", { name: "Offer this container" }).click();
    await owner.getByText("Inspect it", { exact: true }).click();
    await owner.getByLabel("Tare, kg").fill("2300");
    await owner.getByLabel("Greatest gross mass, kg").fill("30480");
    await owner.getByLabel("Allowable stacking").fill("216000");
    await owner.getByLabel("top side rail").fill("2.8");
    await owner.getByLabel("Photos: the plate first").setInputFiles(photo);
    await isShown(owner);
    await picture(owner, "survey-phone", true);
    expect(await seriousFindings(owner)).toEqual([]);
    await owner.getByRole("button", { name: "Keep what was found" }).click();
    await owner.getByText("inspected, waits for the engineer").waitFor();

    const engineer = await openAs("engineer", 1024, 768);
    await engineer.goto(at("survey"));
    await engineer.getByRole("button", { name: "Accept this container" }).click();
    await engineer.getByRole("heading", { name: "1 of 1 containers accepted" }).waitFor();

    await architect.goto(at("survey"));
    await architect.getByText("1. CSQU 305438 3").click();
    await architect.getByRole("button", { name: "Assign it to G1" }).click();
    await architect.getByText("in the place of G1").first().waitFor();
    const revision = await sendRevision(architect);
    expect(revision.scheme.overrides).toMatchObject([{ member: "top side rail", thicknessUm: 2800 }]);
    await engineer.reload();
    await engineer.getByText("1. CSQU 305438 3").click();
    await picture(engineer, "survey-tablet", true);
    expect(await seriousFindings(engineer)).toEqual([]);
    const { letter, contentDigest, resultDigest } = revision;
    const stamp = { id: randomUUID(), revision: letter, contentDigest, resultDigest };
    const conditions = [{ id: randomUUID(), text: "Seal the cut edges.", owedBy: "architect" }];
    await ask(engineer, "stamps", {
      stamp: { ...stamp, disposition: "Make corrections noted", text: "Go on.", conditions },
      password: passwordOf("engineer"),
    });

    await owner.goto(at("site"));
    await owner.getByRole("heading", { name: `Revision ${letter}: being built` }).waitFor();
    await owner.getByText("Pad Q1: open").click();
    await owner.getByLabel("Photo of Pad Q1").setInputFiles(photo);
    await isShown(owner);
    await picture(owner, "site-phone");
    expect(await seriousFindings(owner)).toEqual([]);
    await owner.getByRole("button", { name: "It stands as drawn" }).click();
    await owner.getByText("Pad Q1: built as drawn").waitFor();
    const second = owner.locator(".site-items > li").filter({ hasText: "Pad Q2: open" });
    await second.getByText("Pad Q2: open").click();
    await second.getByLabel("In words").fill("Nobody has poured it.");
    await second.getByRole("button", { name: "It is not there" }).click();
    await owner.getByRole("heading", { name: `Revision ${letter}: not built as drawn` }).waitFor();
    await architect.goto(at("site"));
    await architect.getByText("Pad Q2").first().waitFor();
    await picture(architect, "site-desk", true);
    expect(await seriousFindings(architect)).toEqual([]);
  });

  /** The photo is read from the service and drawn, and not only there. */
  async function isShown(page: Page): Promise<void> {
    const photoThere = page.getByRole("img", { name: "1 of 1" }).last();
    await photoThere.scrollIntoViewIfNeeded();
    await expect.poll(() => photoThere.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(400);
  }

  /** One unit held down on four pads, in a place: it works under all loads. */
  async function draw(page: Page): Promise<void> {
    const { site, basis, containers, pads, locks, loads } = heldUnit();
    const operations: Operation[] = [
      { kind: "site.change", site },
      { kind: "basis.change", basis },
      ...containers.map((container) => ({ kind: "container.place" as const, container })),
      ...pads.map((pad) => ({ kind: "pad.set" as const, pad })),
      ...locks.map((lock) => ({ kind: "lock.set" as const, lock })),
      ...loads.map((load) => ({ kind: "load.put" as const, load })),
    ];
    await ask(page, "draft/acts", { id: randomUUID(), base: 0, operations });
  }

  async function sendRevision(page: Page): Promise<Revision> {
    const draft = (await ask(page, "draft")) as { number: number; contentDigest: string };
    const { number: draftNumber, contentDigest } = draft;
    const sent = RevisionSummary.parse(
      await ask(page, "revisions", { id: randomUUID(), draftNumber, contentDigest, remark: null }),
    );
    const read = async () => Revision.parse(await ask(page, `revisions/${sent.letter}`));
    await expect.poll(async () => (await read()).resultDigest, { timeout: 120_000 }).not.toBeNull();
    return read();
  }
});
