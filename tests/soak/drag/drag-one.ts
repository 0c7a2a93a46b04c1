import { setTimeout as pause } from "node:timers/promises";
import type { Page } from "playwright-core";
import { frameWork, type FrameWork } from "./frame-work.ts";
import { signedInPage, type SignedIn } from "./signed-in-page.ts";

const moves = 120;
const stepPx = 2;
/** A hand moves on whether the page keeps up or not: a step for each frame of a screen that shows sixty a second. */
const paceMs = 1000 / 60;
const categories = [
  "toplevel",
  "devtools.timeline",
  "disabled-by-default-devtools.timeline",
  "devtools.timeline.frame",
];

/** Drags one container of a scheme to and fro under trace; what each frame cost that heard the hand move. */
export async function dragOne(signedIn: SignedIn, projectId: string): Promise<FrameWork[]> {
  const page = await signedInPage(signedIn);
  await page.goto(`${signedIn.origin}/projects/${projectId}/sheet/1`);
  const start = await middleOf(page, "F1");
  await page
    .getByText(/\d+ questions/)
    .first()
    .waitFor();
  await page.keyboard.press("h"); // Shift
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 1, start.y);
  await signedIn.browser.startTracing(page, { categories });
  const sent: Promise<void>[] = [];
  for (let n = 0; n < moves; n += 1) {
    sent.push(page.mouse.move(start.x + stepPx * Math.abs(((n + moves / 4) % moves) - moves / 2), start.y));
    await pause(paceMs);
  }
  await Promise.all(sent);
  const trace = await signedIn.browser.stopTracing();
  await page.keyboard.press("Escape");
  await page.mouse.up();
  await page.context().close();
  return frameWork(trace.toString("utf8"));
}

async function middleOf(page: Page, tag: string): Promise<{ x: number; y: number }> {
  const drawn = page
    .getByRole("tree", { name: "south elevation" })
    .getByRole("treeitem", { name: new RegExp(`^${tag},`) });
  await drawn.first().waitFor();
  const box = await drawn.first().boundingBox();
  if (box === null) throw new Error(`${tag} is not on the paper`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
