import { setTimeout as pause } from "node:timers/promises";
import type { Locator, Page } from "playwright-core";
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

/** What is dragged: a container, or the far edge of an opening, which is chosen first. */
export type Dragged = { tag: string; edge: boolean };

/** Drags one thing of a scheme to and fro under trace; what each frame cost that heard the hand move. */
export async function dragOne(signedIn: SignedIn, projectId: string, { tag, edge }: Dragged): Promise<FrameWork[]> {
  const page = await signedInPage(signedIn);
  await page.goto(`${signedIn.origin}/projects/${projectId}/sheet/1`);
  const drawn = drawnAs(page, tag);
  await drawn.waitFor();
  await page
    .getByText(/\d+ points of statics/)
    .first()
    .waitFor();
  if (edge) await drawn.click();
  else await page.keyboard.press("h"); // Shift
  const start = await middleOf(edge ? drawn.locator('[data-handle="1,0"]') : drawn);
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

/** "F1, 40 ft container, …" or "F1, south side, window W3, …". */
const drawnAs = (page: Page, tag: string): Locator =>
  page
    .getByRole("tree", { name: "south elevation" })
    .getByRole("treeitem", { name: new RegExp(`^(${tag}|[^,]+, [^,]+, \\w+ ${tag}),`) })
    .first();

async function middleOf(drawn: Locator): Promise<{ x: number; y: number }> {
  await drawn.waitFor();
  const box = await drawn.boundingBox();
  if (box === null) throw new Error("what is dragged is not on the paper");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
