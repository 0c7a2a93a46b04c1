import type { Turn } from "../model/turn.ts";

/** Turns a stiffness on translations and rotations (rows in threes) about the upright axis: R·K·Rᵀ. */
export function turnStiffness(stiffness: Float64Array, { cos, sin }: Turn): Float64Array {
  if (cos === 1 && sin === 0) return stiffness;
  const size = Math.sqrt(stiffness.length);
  const turnedRows = new Float64Array(stiffness.length);
  for (let i = 0; i < size; i += 3)
    for (let j = 0; j < size; j++) turnTriple(stiffness, turnedRows, i * size + j, size, cos, sin);
  const result = new Float64Array(stiffness.length);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j += 3) turnTriple(turnedRows, result, i * size + j, 1, cos, sin);
  return result;
}

/** Turns forces or movements on freedoms in threes. */
export function turnVector(values: Float64Array, { cos, sin }: Turn): Float64Array {
  const result = new Float64Array(values.length);
  for (let f = 0; f < values.length; f += 3) turnTriple(values, result, f, 1, cos, sin);
  return result;
}

/** Adds `factor` times the turned values to `sum`, each where its freedom stands, counted from `first`. */
export function addTurned(
  values: Float64Array,
  freedoms: Int32Array,
  { cos, sin }: Turn,
  factor: number,
  sum: Float64Array,
  first: number,
): void {
  for (let f = 0; f < values.length; f += 3) {
    const at = first + (freedoms[f] ?? 0); // three directions stand in a row
    const x = values[f] ?? 0;
    const y = values[f + 1] ?? 0;
    sum[at] = (sum[at] ?? 0) + factor * (cos * x - sin * y);
    sum[at + 1] = (sum[at + 1] ?? 0) + factor * (sin * x + cos * y);
    sum[at + 2] = (sum[at + 2] ?? 0) + factor * (values[f + 2] ?? 0);
  }
}

export function turnVectorBack(values: Float64Array, { cos, sin }: Turn): Float64Array {
  return turnVector(values, { cos, sin: -sin });
}

function turnTriple(from: Float64Array, to: Float64Array, at: number, step: number, cos: number, sin: number): void {
  const x = from[at] ?? 0;
  const y = from[at + step] ?? 0;
  to[at] = cos * x - sin * y;
  to[at + step] = sin * x + cos * y;
  to[at + 2 * step] = from[at + 2 * step] ?? 0;
}
