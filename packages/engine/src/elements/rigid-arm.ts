import type { Vector } from "../numerics/vector.ts";

/**
 * Moves a stiffness from the end of a rigid arm to its node, in place: u(end) = u(node) + θ × arm, so the moments at the
 * node gain arm × force. `at` is the first of the six freedoms (or the three translations with their rotations at
 * `rotations`) in a full row-major matrix of `size` rows.
 */
export function moveStiffness(k: Float64Array, size: number, at: number, arm: Vector): void {
  for (let row = 0; row < size; row++) addCross(k, row * size + at, row * size + at + 3, 1, arm);
  for (let column = 0; column < size; column++) addCross(k, at * size + column, (at + 3) * size + column, size, arm);
}

/** Moves forces from the end of the arm to its node, in place: moment += arm × force. */
export function moveForces(f: Float64Array, at: number, arm: Vector): void {
  addCross(f, at, at + 3, 1, arm);
}

/** The translation of the arm's end: u + θ × arm. */
export function endTranslation(u: Vector, rotation: Vector, arm: Vector): Vector {
  return [
    u[0] + rotation[1] * arm[2] - rotation[2] * arm[1],
    u[1] + rotation[2] * arm[0] - rotation[0] * arm[2],
    u[2] + rotation[0] * arm[1] - rotation[1] * arm[0],
  ];
}

function addCross(values: Float64Array, from: number, to: number, step: number, arm: Vector): void {
  const x = values[from] ?? 0;
  const y = values[from + step] ?? 0;
  const z = values[from + 2 * step] ?? 0;
  values[to] = (values[to] ?? 0) + arm[1] * z - arm[2] * y;
  values[to + step] = (values[to + step] ?? 0) + arm[2] * x - arm[0] * z;
  values[to + 2 * step] = (values[to + 2 * step] ?? 0) + arm[0] * y - arm[1] * x;
}
