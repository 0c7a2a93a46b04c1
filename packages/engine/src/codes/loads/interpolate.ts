import { log } from "../../numerics/elementary.ts";

export type Point = readonly [at: number, value: number];

/** Straight lines between the points of a table, constant beyond its ends. Points run upwards. */
export function interpolate(points: readonly Point[], at: number): number {
  const upper = points.findIndex(([place]) => place >= at);
  const end = points[upper === -1 ? points.length - 1 : upper];
  if (end === undefined) throw new RangeError("a table needs points");
  const start = points[upper - 1];
  if (upper === -1 || start === undefined) return end[1];
  return start[1] + ((end[1] - start[1]) * (at - start[0])) / (end[0] - start[0]);
}

/** The same over a logarithmic axis, as the area charts of component pressures are drawn. */
export const interpolateLog = (points: readonly Point[], at: number): number =>
  interpolate(
    points.map(([place, value]) => [log(place), value]),
    log(at),
  );
