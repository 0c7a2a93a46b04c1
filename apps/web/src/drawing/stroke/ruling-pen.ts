import type { ScreenPoint } from "../view-transform.ts";
import { polygonPath } from "../px-path.ts";
import { seededRandom } from "../seeded-random.ts";

/** Where the pen runs and how wide it is at either end, px. */
export type PenRun = { from: ScreenPoint; to: ScreenPoint; widthFromPx: number; widthToPx: number };

const samplePx = 5;
const wanderPx = 0.22;

/**
 * Outline of a stroke drawn with a ruling pen: the centre line sampled every 5 px, each edge set at half the width and
 * 0.22 px of wander that the seed fixes.
 */
export function rulingPen({ from, to, widthFromPx, widthToPx }: PenRun, seed: string): string {
  const alongX = to.xPx - from.xPx;
  const alongY = to.yPx - from.yPx;
  const length = Math.hypot(alongX, alongY);
  if (length === 0) return "";
  const random = seededRandom(seed);
  const steps = Math.max(1, Math.round(length / samplePx));
  const left: ScreenPoint[] = [];
  const right: ScreenPoint[] = [];
  for (let step = 0; step <= steps; step += 1) {
    const share = step / steps;
    const half = (widthFromPx + (widthToPx - widthFromPx) * share) / 2;
    const x = from.xPx + alongX * share;
    const y = from.yPx + alongY * share;
    const wander = () => half + (random() * 2 - 1) * wanderPx;
    left.push(aside(x, y, alongX / length, alongY / length, wander()));
    right.push(aside(x, y, alongX / length, alongY / length, -wander()));
  }
  return polygonPath([...left, ...right.toReversed()]);
}

const aside = (x: number, y: number, unitX: number, unitY: number, by: number): ScreenPoint => ({
  xPx: x - unitY * by,
  yPx: y + unitX * by,
});
