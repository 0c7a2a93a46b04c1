import { signedInPage, type SignedIn } from "./signed-in-page.ts";

/** How long after the address was asked for the drawing with the first container on it is painted, ms. */
export async function firstDrawing(signedIn: SignedIn, projectId: string): Promise<number> {
  const page = await signedInPage(signedIn);
  await page.addInitScript(noteFirstDrawing);
  await page.goto(`${signedIn.origin}/projects/${projectId}/sheet/1`);
  await page.waitForFunction(() => typeof Reflect.get(globalThis, "drawnAtMs") === "number");
  const drawnMs = await page.evaluate(() => Number(Reflect.get(globalThis, "drawnAtMs")));
  await page.context().close();
  return drawnMs;
}

/** Runs in the page: notes when the frame after the one with the first container on it begins. */
function noteFirstDrawing(): void {
  const watch = new MutationObserver(() => {
    if (document.querySelector('.elevation [data-kind="container"]') === null) return;
    watch.disconnect();
    requestAnimationFrame(() => requestAnimationFrame((atMs) => Reflect.set(globalThis, "drawnAtMs", atMs)));
  });
  watch.observe(document, { childList: true, subtree: true });
}
