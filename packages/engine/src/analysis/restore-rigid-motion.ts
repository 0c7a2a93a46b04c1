import type { Vector } from "../numerics/vector.ts";

/**
 * Takes out of a condensed stiffness (6 freedoms per place, full, row-major) the rounding with which it answers rigid
 * movement: S ← (I − V·Vᵀ)·S·(I − V·Vᵀ) with V an orthonormal basis of the six rigid movements. In exact arithmetic this
 * changes nothing; in rounded arithmetic it keeps equilibrium exact and lets a floating part be told from a soft one.
 */
export function restoreRigidMotion(stiffness: Float64Array, places: readonly Vector[]): Float64Array {
  const size = places.length * 6;
  const { basis, scale } = rigidBasis(places);
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
function rigidBasis(places: readonly Vector[]): { basis: Float64Array[]; scale: Float64Array } {
  const centre = [0, 1, 2].map((c) => places.reduce((sum, place) => sum + (place[c] ?? 0), 0) / places.length);
  const about = places.map((place): Vector => [
    place[0] - (centre[0] ?? 0),
    place[1] - (centre[1] ?? 0),
    place[2] - (centre[2] ?? 0),
  ]);
  const square = about.reduce((sum, [x, y, z]) => sum + x * x + y * y + z * z, 0) / places.length;
  const arm = square > 0 ? Math.sqrt(square) : 1;
  const scale = Float64Array.from({ length: places.length * 6 }, (_, f) => (f % 6 < 3 ? 1 : 1 / arm));
  const basis: Float64Array[] = [];
  for (let c = 0; c < 6; c++) orthonormalise(rigidMovement(about, arm, c), basis);
  return { basis, scale };
}

function rigidMovement(about: readonly Vector[], arm: number, c: number): Float64Array {
  const v = new Float64Array(about.length * 6);
  about.forEach(([x, y, z], n) => {
    v[n * 6 + c] = 1;
    if (c === 3) v.set([0, -z / arm, y / arm], n * 6);
    if (c === 4) v.set([z / arm, 0, -x / arm], n * 6);
    if (c === 5) v.set([-y / arm, x / arm, 0], n * 6);
  });
  return v;
}

/** Gram–Schmidt, twice for full accuracy (Kahan and Parlett: "twice is enough", from memory). */
function orthonormalise(v: Float64Array, basis: Float64Array[]): void {
  for (let pass = 0; pass < 2; pass++) {
    for (const other of basis) {
      const part = inner(other, v);
      for (let f = 0; f < v.length; f++) v[f] = (v[f] ?? 0) - part * (other[f] ?? 0);
    }
  }
  const size = Math.sqrt(inner(v, v));
  basis.push(v.map((value) => value / size));
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
