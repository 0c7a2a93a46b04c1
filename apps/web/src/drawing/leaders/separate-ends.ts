import type { ScreenPoint } from "../view-transform.ts";

/** Two ends nearer than this would hide each other, px: a number on the drawing is 18 px wide. */
const leastApartPx = 21;

/** Ends of leaders with those that would fall together moved down, or upwards, one after the other, in the order given. */
export function separateEnds<E extends ScreenPoint & { upwards?: boolean }>(ends: readonly (E | null)[]): (E | null)[] {
  const taken: ScreenPoint[] = [];
  return ends.map((end) => {
    if (end === null) return null;
    const stepPx = end.upwards === true ? -leastApartPx : leastApartPx;
    let yPx = end.yPx;
    while (taken.some((other) => Math.hypot(other.xPx - end.xPx, other.yPx - yPx) < leastApartPx)) yPx += stepPx;
    taken.push({ xPx: end.xPx, yPx });
    return { ...end, yPx };
  });
}
