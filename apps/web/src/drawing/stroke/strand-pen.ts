import { polygonPath } from "../px-path.ts";
import { seededRandom } from "../seeded-random.ts";
import type { ScreenPoint } from "../view-transform.ts";

const wanderPx = 0.14;
/** Samples over which a strand tapers at either end. */
const taper = 5;
/** Px between samples of the centre line. */
const samplePx = 5;

/** Outline of a strand along a curve: as wide as its force, tapering over its first and last samples, the same on every redraw. */
export function strandPen(way: readonly ScreenPoint[], widthPx: number, seed: string): string {
  const points = apart(way);
  if (points.length < 2) return "";
  const random = seededRandom(seed);
  const left: ScreenPoint[] = [];
  const right: ScreenPoint[] = [];
  points.forEach((at, n) => {
    const before = points[n - 1] ?? at;
    const after = points[n + 1] ?? at;
    const [dx, dy] = [after.xPx - before.xPx, after.yPx - before.yPx];
    const length = Math.hypot(dx, dy) || 1;
    const ends = Math.min(1, (Math.min(n, points.length - 1 - n) + 1) / taper);
    const half = () => (widthPx * ends) / 2 + (random() * 2 - 1) * wanderPx;
    const [l, r] = [half(), half()];
    left.push({ xPx: at.xPx - (dy / length) * l, yPx: at.yPx + (dx / length) * l });
    right.push({ xPx: at.xPx + (dy / length) * r, yPx: at.yPx - (dx / length) * r });
  });
  return polygonPath([...left, ...right.toReversed()]);
}

/** Points of a curve about 5 px apart, both ends kept. */
function apart(way: readonly ScreenPoint[]): ScreenPoint[] {
  const kept: ScreenPoint[] = [];
  way.forEach((at, n) => {
    const last = kept.at(-1);
    const far = last === undefined || Math.hypot(at.xPx - last.xPx, at.yPx - last.yPx) >= samplePx;
    if (far || n === way.length - 1) kept.push(at);
  });
  return kept;
}
