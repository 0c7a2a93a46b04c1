import type { ScreenPoint } from "../view-transform.ts";
import { polygonPath } from "../px-path.ts";
import { seededRandom } from "../seeded-random.ts";

/** Where the pen runs and how wide it is at either end, px. */
export type PenRun = {
  from: ScreenPoint;
  to: ScreenPoint;
  widthFromPx: number;
  widthToPx: number;
  /** Widths on the way, by the share of it that is run: where they are known, they hold. */
  onTheWay?: readonly { share: number; widthPx: number }[] | undefined;
};

const samplePx = 5;
const wanderPx = 0.22;

/**
 * Outline of a stroke drawn with a ruling pen: the centre line sampled every 5 px, each edge set at half the width and
 * 0.22 px of wander that the seed fixes.
 */
export function rulingPen({ from, to, widthFromPx, widthToPx, onTheWay = [] }: PenRun, seed: string): string {
  const alongX = to.xPx - from.xPx;
  const alongY = to.yPx - from.yPx;
  const length = Math.hypot(alongX, alongY);
  if (length === 0) return "";
  const random = seededRandom(seed);
  const steps = Math.max(1, Math.round(length / samplePx));
  const widths = [{ share: 0, widthPx: widthFromPx }, ...onTheWay, { share: 1, widthPx: widthToPx }];
  const left: ScreenPoint[] = [];
  const right: ScreenPoint[] = [];
  for (let step = 0; step <= steps; step += 1) {
    const share = step / steps;
    const half = widthAt(widths, share) / 2;
    const x = from.xPx + alongX * share;
    const y = from.yPx + alongY * share;
    const wander = () => half + (random() * 2 - 1) * wanderPx;
    left.push(aside(x, y, alongX / length, alongY / length, wander()));
    right.push(aside(x, y, alongX / length, alongY / length, -wander()));
  }
  return polygonPath([...left, ...right.toReversed()]);
}

type Width = { share: number; widthPx: number };

function widthAt(widths: readonly Width[], share: number): number {
  const after = widths.findIndex((width) => width.share >= share);
  const [a, b] = [widths[Math.max(0, after - 1)], widths[after]];
  if (a === undefined || b === undefined) return 0;
  const part = b.share === a.share ? 1 : (share - a.share) / (b.share - a.share);
  return a.widthPx + (b.widthPx - a.widthPx) * part;
}

const aside = (x: number, y: number, unitX: number, unitY: number, by: number): ScreenPoint => ({
  xPx: x - unitY * by,
  yPx: y + unitX * by,
});
