import { roundingBound } from "../numerics/tolerances.ts";
import type { Vector } from "../numerics/vector.ts";

/**
 * Takes out of a condensed stiffness (full, row-major) the rounding with which it answers rigid movement:
 * S ← (I − V·Vᵀ)·S·(I − V·Vᵀ) with V an orthonormal basis of the rigid movements. In exact arithmetic this changes nothing;
 * in rounded arithmetic it keeps equilibrium exact and lets a floating part be told from a soft one. Each row is one freedom:
 * 6·place + 0…5 in `freedoms`.
 */
export function restoreRigidMotion(
  stiffness: Float64Array,
  places: readonly Vector[],
  freedoms: Int32Array,
): Float64Array {
  const size = freedoms.length;
  const { basis, scale } = rigidBasis(places, freedoms);
  const s = scaled(stiffness, scale, size, false);
  const answer = basis.map((v) => multiply(s, v, size)); // S·V, zero but for rounding
  // with C = S·V − ½·V·(Vᵀ·S·V) the projection is S − C·Vᵀ − V·Cᵀ
  const correction = answer.map((a) => {
    const along = new Float64Array(size);
    for (const v of basis) addTimes(along, v, inner(v, a) / 2);
    for (let f = 0; f < size; f++) a[f] = (a[f] ?? 0) - (along[f] ?? 0);
    return a;
  });
  basis.forEach((v, column) => subtractSymmetric(s, correction[column] ?? v, v, size));
  return scaled(s, scale, size, true);
}

function addTimes(sum: Float64Array, v: Float64Array, factor: number): void {
  for (let f = 0; f < sum.length; f++) sum[f] = (sum[f] ?? 0) + factor * (v[f] ?? 0);
}

/** S ← S − c·vᵀ − v·cᵀ. */
function subtractSymmetric(s: Float64Array, c: Float64Array, v: Float64Array, size: number): void {
  for (let i = 0; i < size; i++) {
    const [ci, vi] = [c[i] ?? 0, v[i] ?? 0];
    for (let j = 0; j < size; j++) s[i * size + j] = (s[i * size + j] ?? 0) - (ci * (v[j] ?? 0) + vi * (c[j] ?? 0));
  }
}

/** Rigid movements made orthonormal, rotations measured as movement at the part's mean half size. */
function rigidBasis(places: readonly Vector[], freedoms: Int32Array): { basis: Float64Array[]; scale: Float64Array } {
  const centre = [0, 1, 2].map((c) => places.reduce((sum, place) => sum + (place[c] ?? 0), 0) / places.length);
  const about = places.map((place): Vector => [
    place[0] - (centre[0] ?? 0),
    place[1] - (centre[1] ?? 0),
    place[2] - (centre[2] ?? 0),
  ]);
  const square = about.reduce((sum, [x, y, z]) => sum + x * x + y * y + z * z, 0) / places.length;
  const arm = square > 0 ? Math.sqrt(square) : 1;
  const scale = new Float64Array(freedoms.length);
  for (let f = 0; f < scale.length; f++) scale[f] = (freedoms[f] ?? 0) % 6 < 3 ? 1 : 1 / arm;
  const basis: Float64Array[] = [];
  for (let c = 0; c < 6; c++) orthonormalise(rigidMovement(about, freedoms, arm, c), basis);
  return { basis, scale };
}

/** A movement by 1 along an axis, or a turn about it. */
function rigidMovement(about: readonly Vector[], freedoms: Int32Array, arm: number, c: number): Float64Array {
  const movement = new Float64Array(freedoms.length);
  for (let f = 0; f < movement.length; f++) {
    const direction = (freedoms[f] ?? 0) % 6;
    const place = about[Math.floor((freedoms[f] ?? 0) / 6)] ?? ORIGIN;
    if (direction >= 3 || c < 3) movement[f] = direction === c ? 1 : 0;
    else movement[f] = turning(place, c - 3, direction) / arm;
  }
  return movement;
}

/** How far a place goes in a direction where the part turns by 1 about an axis through its centre: e × r. */
function turning(place: Vector, axis: number, direction: number): number {
  if (direction === axis) return 0;
  const other = 3 - axis - direction;
  return (direction - axis + 3) % 3 === 1 ? -(place[other] ?? 0) : (place[other] ?? 0);
}

const ORIGIN: Vector = [0, 0, 0];

/** What is less of a movement is the rounding of the others: turning about the line on which all places lie moves nothing. */
const ROUNDING = roundingBound(1024);

/** Gram–Schmidt, twice for full accuracy (Kahan and Parlett: "twice is enough", from memory). */
function orthonormalise(v: Float64Array, basis: Float64Array[]): void {
  const before = Math.sqrt(inner(v, v));
  for (let pass = 0; pass < 2; pass++) {
    for (const other of basis) {
      const part = inner(other, v);
      for (let f = 0; f < v.length; f++) v[f] = (v[f] ?? 0) - part * (other[f] ?? 0);
    }
  }
  const size = Math.sqrt(inner(v, v));
  if (size > ROUNDING * before) basis.push(v.map((value) => value / size));
}

function scaled(s: Float64Array, scale: Float64Array, size: number, back: boolean): Float64Array<ArrayBuffer> {
  const result = new Float64Array(s.length);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      const factor = (scale[i] ?? 1) * (scale[j] ?? 1);
      result[i * size + j] = back ? (s[i * size + j] ?? 0) / factor : (s[i * size + j] ?? 0) * factor;
    }
  }
  return result;
}

function multiply(s: Float64Array, v: Float64Array, size: number): Float64Array {
  const result = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += (s[i * size + j] ?? 0) * (v[j] ?? 0);
    result[i] = sum;
  }
  return result;
}

function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let f = 0; f < a.length; f++) sum += (a[f] ?? 0) * (b[f] ?? 0);
  return sum;
}
