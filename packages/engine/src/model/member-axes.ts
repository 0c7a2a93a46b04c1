import { cross, dot, lengthOf, minus, times, type Vector } from "../numerics/vector.ts";

/** Local axes of a member as unit vectors in global axes. */
export interface MemberAxes {
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
  readonly lengthMm: number;
}

/**
 * Local x from `start` to `end`; z is the part of `up` at right angles to x (global Z when not given; global Y for members
 * within 1° of the vertical); y = z × x. Null when the length is zero or `up` lies along the member.
 */
export function memberAxes(start: Vector, end: Vector, up: Vector | undefined): MemberAxes | null {
  const along = minus(end, start);
  const lengthMm = lengthOf(along);
  if (lengthMm === 0) return null;
  const x = times(along, 1 / lengthMm);
  const reference = up ?? (isUpright(x) ? GLOBAL_Y : GLOBAL_Z);
  const across = minus(reference, times(x, dot(reference, x)));
  const size = lengthOf(across);
  if (size <= ALONG * lengthOf(reference)) return null;
  const z = times(across, 1 / size);
  return { x, y: cross(z, x), z, lengthMm };
}

const GLOBAL_Y: Vector = [0, 1, 0];
const GLOBAL_Z: Vector = [0, 0, 1];
const SIN_ONE_DEGREE_SQUARED = 3.0458649e-4;
const ALONG = 1e-6; // sine of the angle below which the direction of z would be rounding alone

function isUpright(x: Vector): boolean {
  return x[0] * x[0] + x[1] * x[1] < SIN_ONE_DEGREE_SQUARED;
}
