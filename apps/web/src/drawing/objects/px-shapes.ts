import { convexHull } from "@cornerway/engine";
import type { RectPx } from "../px-path.ts";
import type { ScreenPoint } from "../view-transform.ts";

/** The outline of points on the paper. */
export const hullOf = (points: readonly ScreenPoint[]): ScreenPoint[] =>
  convexHull(points.map(({ xPx, yPx }) => ({ rightMm: xPx, downMm: yPx }))).map(({ rightMm, downMm }) => ({
    xPx: rightMm,
    yPx: downMm,
  }));

/** The upright box round points on the paper. */
export function boundsOf(points: readonly ScreenPoint[]): RectPx {
  const left = Math.min(...points.map(({ xPx }) => xPx));
  const top = Math.min(...points.map(({ yPx }) => yPx));
  return {
    xPx: left,
    yPx: top,
    widthPx: Math.max(...points.map(({ xPx }) => xPx)) - left,
    heightPx: Math.max(...points.map(({ yPx }) => yPx)) - top,
  };
}
