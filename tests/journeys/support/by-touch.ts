import type { Locator, Page } from "playwright-core";

interface PointPx {
  x: number;
  y: number;
}

/** Fingers on the page, as the browser tells them of a touch screen. */
export interface Fingers {
  tap(at: PointPx): Promise<void>;
  drag(from: PointPx, to: PointPx): Promise<void>;
  /** Two fingers about a place, from one distance apart to another, px. */
  pinch(about: PointPx, fromPx: number, toPx: number): Promise<void>;
}

const steps = 6;

export async function fingersOn(page: Page): Promise<Fingers> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setTouchEmulationEnabled", { enabled: true, maxTouchPoints: 2 });
  const tell = (type: "touchStart" | "touchMove" | "touchEnd", touchPoints: PointPx[]) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints });
  const along = async (placesAt: (share: number) => PointPx[]) => {
    await tell("touchStart", placesAt(0));
    for (let step = 1; step <= steps; step += 1) await tell("touchMove", placesAt(step / steps));
    await tell("touchEnd", []);
  };
  return {
    tap: async (at) => {
      await tell("touchStart", [at]);
      await tell("touchEnd", []);
    },
    drag: (from, to) =>
      along((share) => [{ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }]),
    pinch: (about, fromPx, toPx) =>
      along((share) => {
        const half = (fromPx + (toPx - fromPx) * share) / 2;
        return [
          { x: about.x - half, y: about.y },
          { x: about.x + half, y: about.y },
        ];
      }),
  };
}

/** The middle of something on the page. */
export async function middleOf(place: Locator): Promise<PointPx> {
  const box = await place.boundingBox();
  if (box === null) throw new Error(`${String(place)} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
