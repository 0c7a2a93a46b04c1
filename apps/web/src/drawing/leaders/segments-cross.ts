import type { ScreenPoint } from "../view-transform.ts";

/** True when two straight lines share a point, ends included. */
export function segmentsCross(a: ScreenPoint, b: ScreenPoint, c: ScreenPoint, d: ScreenPoint): boolean {
  const abc = turn(a, b, c);
  const abd = turn(a, b, d);
  const cda = turn(c, d, a);
  const cdb = turn(c, d, b);
  if (abc !== abd && cda !== cdb) return true;
  return (
    (abc === 0 && within(a, b, c)) ||
    (abd === 0 && within(a, b, d)) ||
    (cda === 0 && within(c, d, a)) ||
    (cdb === 0 && within(c, d, b))
  );
}

/** True when two open lines of points share a point. */
export function linesCross(one: readonly ScreenPoint[], other: readonly ScreenPoint[]): boolean {
  return pairs(one).some(([a, b]) => pairs(other).some(([c, d]) => segmentsCross(a, b, c, d)));
}

const pairs = (line: readonly ScreenPoint[]): [ScreenPoint, ScreenPoint][] =>
  line.slice(1).map((to, index) => [line[index] ?? to, to]);

const turn = (a: ScreenPoint, b: ScreenPoint, c: ScreenPoint): number =>
  Math.sign((b.xPx - a.xPx) * (c.yPx - a.yPx) - (b.yPx - a.yPx) * (c.xPx - a.xPx));

const within = (a: ScreenPoint, b: ScreenPoint, c: ScreenPoint): boolean =>
  Math.min(a.xPx, b.xPx) <= c.xPx &&
  c.xPx <= Math.max(a.xPx, b.xPx) &&
  Math.min(a.yPx, b.yPx) <= c.yPx &&
  c.yPx <= Math.max(a.yPx, b.yPx);
