import { LEAST_SHARE_OF_GAIN } from "../numerics/tolerances.ts";
import { leastPlane, type Plane } from "./least-plane.ts";
import type { PointForce } from "./resultant.ts";

/**
 * A bearing in plan, mm, with what already comes down on it, kN: its share may not take away more than that, but where it
 * is held down.
 */
export type SpringPlace = {
  readonly xMm: number;
  readonly yMm: number;
  readonly directKn: number;
  readonly held?: boolean;
};

/**
 * Shares of one load among the bearings of a rigid unit, kN. Three bearings off one line or fewer are plain statics;
 * with more each counts as an equal spring, which is the split of least sum of squares. No bearing pulls
 * (share + direct ≥ 0) unless it is held; the resultant of load and direct forces must lie within the bearings.
 *
 * Least sum of squares in equilibrium with bounds is, seen from its dual, the least value of a convex function of the
 * plane a + b x + c y the springs' forces lie on, bounded below: found by Newton's method with a line search.
 */
export function shareBySprings(places: readonly SpringPlace[], load: PointForce): number[] {
  const bearings = aboutMiddle(places);
  const x = load.xMm / 1000 - bearings.xM;
  const y = load.yMm / 1000 - bearings.yM;
  const goal: Plane = [load.forceKn, load.forceKn * x, load.forceKn * y];
  let plane = leastPlane(bearings.all, goal);
  for (let round = 0; round < mostRounds; round += 1) {
    const left = unbalanced(bearings.all, plane, goal);
    if (largest(left) <= settled * (1 + largest(goal))) break;
    plane = stepped(bearings.all, plane, goal, left);
  }
  return bearings.all.map((bearing) => forceAt(bearing, plane));
}

/** Newton settles in a handful of rounds; more than this are never needed for bounded figures. */
const mostRounds = 100;
/** Of the load, what may stay unbalanced. */
const settled = 1e-12;

type Bearing = { readonly x: number; readonly y: number; readonly least: number };
type Bearings = { readonly all: readonly Bearing[]; readonly xM: number; readonly yM: number };

/** Places in metres about their middle, so that sums stay well conditioned anywhere on the site. */
function aboutMiddle(places: readonly SpringPlace[]): Bearings {
  const xM = places.reduce((sum, { xMm }) => sum + xMm / 1000, 0) / places.length;
  const yM = places.reduce((sum, { yMm }) => sum + yMm / 1000, 0) / places.length;
  const all = places.map(({ xMm, yMm, directKn, held }) => ({
    x: xMm / 1000 - xM,
    y: yMm / 1000 - yM,
    least: held === true ? -Infinity : -directKn,
  }));
  return { all, xM, yM };
}

const heightAt = ({ x, y }: Bearing, [a, b, c]: Plane): number => a + b * x + c * y;

const forceAt = (bearing: Bearing, plane: Plane): number => Math.max(bearing.least, heightAt(bearing, plane));

/** What is left of the load and its moments once the bearings have given theirs. */
function unbalanced(bearings: readonly Bearing[], plane: Plane, goal: Plane): Plane {
  let [force, momentX, momentY] = goal;
  for (const bearing of bearings) {
    const given = forceAt(bearing, plane);
    force -= given;
    momentX -= given * bearing.x;
    momentY -= given * bearing.y;
  }
  return [force, momentX, momentY];
}

const largest = ([a, b, c]: Plane): number => Math.max(Math.abs(a), Math.abs(b), Math.abs(c));

/**
 * One Newton step: the whole one where it nearly settles the balance (it does at once when the right bearings press),
 * else one halved until the dual value falls enough (Armijo).
 */
function stepped(bearings: readonly Bearing[], plane: Plane, goal: Plane, left: Plane): Plane {
  const pressing = bearings.filter((bearing) => heightAt(bearing, plane) > bearing.least);
  const whole = along(plane, leastPlane(pressing, left), 1);
  if (largest(unbalanced(bearings, whole, goal)) <= largest(left) / 10) return whole;
  const step = leastPlane(pressing.length === 0 ? bearings : pressing, left, stiffening);
  const gain = left[0] * step[0] + left[1] * step[1] + left[2] * step[2];
  const from = dualValue(bearings, plane, goal);
  let share = 1;
  while (
    share > leastStep &&
    dualValue(bearings, along(plane, step, share), goal) > from - LEAST_SHARE_OF_GAIN * share * gain
  )
    share /= 2;
  return along(plane, step, share);
}

const leastStep = 1e-12;

/** Of the spread of all bearings, kept in a step so that those that have let go can come back in. */
const stiffening = 1e-6;

const along = (plane: Plane, step: Plane, share: number): Plane => [
  plane[0] + share * step[0],
  plane[1] + share * step[1],
  plane[2] + share * step[2],
];

function dualValue(bearings: readonly Bearing[], plane: Plane, goal: Plane): number {
  const work = goal[0] * plane[0] + goal[1] * plane[1] + goal[2] * plane[2];
  return bearings.reduce((sum, bearing) => {
    const height = heightAt(bearing, plane);
    const energy =
      height > bearing.least ? (height * height) / 2 : bearing.least * height - (bearing.least * bearing.least) / 2;
    return sum + energy;
  }, -work);
}
