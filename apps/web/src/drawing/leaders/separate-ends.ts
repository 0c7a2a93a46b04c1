import type { ScreenPoint } from "../view-transform.ts";

/** Two ends nearer than this would hide each other, px: a number on the drawing is 18 px wide. */
const leastApartPx = 21;

/** The height between sky and ground that ends keep to, px. */
export type HeightPx = { topPx: number; footPx: number };

/**
 * Ends of leaders with those that would fall together moved down, or upwards, one after the other, in the order given.
 * Where that would take one out of the given height, it stands aside instead, at the nearest place that is free.
 */
export function separateEnds<E extends ScreenPoint & { upwards?: boolean }>(
  ends: readonly (E | null)[],
  height?: HeightPx,
): (E | null)[] {
  const taken: ScreenPoint[] = [];
  const isFree = (spot: ScreenPoint) =>
    taken.every((other) => Math.hypot(other.xPx - spot.xPx, other.yPx - spot.yPx) >= leastApartPx);
  return ends.map((end) => {
    if (end === null) return null;
    const stepPx = end.upwards === true ? -leastApartPx : leastApartPx;
    const spot = { xPx: end.xPx, yPx: end.yPx };
    while (!isFree(spot)) spot.yPx += stepPx;
    const stood = height === undefined || isWithin(spot, height) ? spot : (besides(end, height).find(isFree) ?? spot);
    taken.push(stood);
    return { ...end, ...stood };
  });
}

const isWithin = ({ yPx }: ScreenPoint, { topPx, footPx }: HeightPx) => yPx >= topPx && yPx <= footPx;

/** So many steps aside, up and down are tried. */
const mostSteps = 8;
const steps = Array.from({ length: 2 * mostSteps + 1 }, (_, at) => (at - mostSteps) * leastApartPx);

/** Places round an end within the height, the nearest first. */
function besides({ xPx, yPx }: ScreenPoint, height: HeightPx): ScreenPoint[] {
  const far = (spot: ScreenPoint) => Math.hypot(spot.xPx - xPx, spot.yPx - yPx);
  return steps
    .flatMap((across) => steps.map((down) => ({ xPx: xPx + across, yPx: yPx + down })))
    .filter((spot) => isWithin(spot, height))
    .toSorted((a, b) => far(a) - far(b));
}
