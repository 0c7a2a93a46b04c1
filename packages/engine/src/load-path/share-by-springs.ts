import type { PointForce } from "./resultant.ts";

/** A bearing in plan, mm, with what already comes down on it, kN: its share may not take away more than that. */
export type SpringPlace = { readonly xMm: number; readonly yMm: number; readonly directKn: number };

/**
 * Shares of one load among the bearings of a rigid unit, kN. Three bearings off one line or fewer are plain statics;
 * with more each counts as an equal spring, which is the split of least sum of squares. No bearing pulls
 * (share + direct ≥ 0); the resultant of load and direct forces must lie within the bearings.
 */
export function shareBySprings(places: readonly SpringPlace[], load: PointForce): number[] {
  const held = places.map(() => false);
  let shares = sharesWith(places, load, held);
  for (let round = 0; round < 4 * places.length; round += 1) {
    const next = worstLifting(places, shares.values, held) ?? worstPressing(places, shares.plane, held);
    if (next === undefined) return shares.values;
    held[next] = !held[next];
    shares = sharesWith(places, load, held);
  }
  return shares.values;
}

/** Forces below this are none, kN. */
const noForceKn = 1e-9;

type Plane = readonly [number, number, number];
type Shares = { readonly values: number[]; readonly plane: Plane };

/** Share of each bearing a + b x + c y; a held one has let go and gives back what came down on it. */
function sharesWith(places: readonly SpringPlace[], load: PointForce, held: readonly boolean[]): Shares {
  let rest: Plane = [load.forceKn, load.forceKn * metres(load.xMm), load.forceKn * metres(load.yMm)];
  const free: SpringPlace[] = [];
  places.forEach((place, at) => {
    if (!(held[at] ?? false)) free.push(place);
    else
      rest = [
        rest[0] + place.directKn,
        rest[1] + place.directKn * metres(place.xMm),
        rest[2] + place.directKn * metres(place.yMm),
      ];
  });
  const plane = planeThrough(free, rest);
  return { values: places.map((place, at) => (held[at] ? -place.directKn : heightAt(plane, place))), plane };
}

const metres = (mm: number): number => mm / 1000;

const heightAt = ([a, b, c]: Plane, { xMm, yMm }: SpringPlace): number => a + b * metres(xMm) + c * metres(yMm);

function worstLifting(places: readonly SpringPlace[], values: readonly number[], held: readonly boolean[]) {
  return worst(places, (place, at) => (held[at] ? 0 : -((values[at] ?? 0) + place.directKn)));
}

function worstPressing(places: readonly SpringPlace[], plane: Plane, held: readonly boolean[]) {
  return worst(places, (place, at) => (held[at] ? heightAt(plane, place) + place.directKn : 0));
}

function worst(places: readonly SpringPlace[], excess: (place: SpringPlace, at: number) => number): number | undefined {
  let found: number | undefined;
  let most = noForceKn;
  places.forEach((place, at) => {
    const value = excess(place, at);
    if (value <= most) return;
    most = value;
    found = at;
  });
  return found;
}

/** Normal equations of the plane, about the middle of the bearings so that lines and points solve as well. */
function planeThrough(places: readonly SpringPlace[], [force, momentX, momentY]: Plane): Plane {
  const count = places.length;
  if (count === 0) return [0, 0, 0];
  const mx = places.reduce((sum, { xMm }) => sum + metres(xMm), 0) / count;
  const my = places.reduce((sum, { yMm }) => sum + metres(yMm), 0) / count;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (const { xMm, yMm } of places) {
    const x = metres(xMm) - mx;
    const y = metres(yMm) - my;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const [b, c] = slopes(xx, xy, yy, momentX - force * mx, momentY - force * my);
  return [force / count - b * mx - c * my, b, c];
}

/** Least squares of [xx xy; xy yy] [b c] = [x y]; on a line only the turn about its middle along it is resisted. */
function slopes(xx: number, xy: number, yy: number, x: number, y: number): [number, number] {
  const determinant = xx * yy - xy * xy;
  const trace = xx + yy;
  if (trace < flatM2) return [0, 0];
  if (determinant > flatM2 * trace) return [(x * yy - y * xy) / determinant, (y * xx - x * xy) / determinant];
  const square = trace * trace;
  return [(xx * x + xy * y) / square, (xy * x + yy * y) / square];
}

/** Square metres of spread below which bearings are one point or one line; (1 mm)². */
const flatM2 = 1e-6;
