import { ONE_LINE } from "../numerics/tolerances.ts";

/** Three numbers: a height and its two slopes, or a force and its two moments. */
export type Plane = readonly [number, number, number];

type At = { readonly x: number; readonly y: number };

/**
 * The plane a + b x + c y whose heights at the places add up to a force and two moments: normal equations of least sum
 * of squares. Places on one line or one point leave slopes open; these are taken as 0. `stiffening` adds that part of
 * the diagonal, so that every direction is resisted.
 */
export function leastPlane(places: readonly At[], [force, momentX, momentY]: Plane, stiffening = 0): Plane {
  const count = places.length * (1 + stiffening);
  if (places.length === 0) return [0, 0, 0];
  const mx = places.reduce((sum, { x }) => sum + x, 0) / places.length;
  const my = places.reduce((sum, { y }) => sum + y, 0) / places.length;
  let xx = stiffening;
  let xy = 0;
  let yy = stiffening;
  for (const place of places) {
    const x = place.x - mx;
    const y = place.y - my;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const [b, c] = slopes(xx, xy, yy, momentX - force * mx, momentY - force * my);
  return [force / count - b * mx - c * my, b, c];
}

/** Square metres of spread below which places are one point or one line; (1 mm)². */
const flatM2 = 1e-6;

function slopes(xx: number, xy: number, yy: number, x: number, y: number): [number, number] {
  const determinant = xx * yy - xy * xy;
  const trace = xx + yy;
  if (trace < flatM2) return [0, 0];
  if (determinant > flatM2 * flatM2 + ONE_LINE * trace * trace)
    return [(x * yy - y * xy) / determinant, (y * xx - x * xy) / determinant];
  const square = trace * trace;
  return [(xx * x + xy * y) / square, (xy * x + yy * y) / square];
}
