import { roundingBound } from "../numerics/tolerances.ts";

/**
 * Takes the released freedoms out of a local stiffness and its fixed-end forces, in place, one after the other (exact
 * elimination: the end does not transmit that force). Returns the load columns that drive a freedom nothing resists, as
 * when both ends of a bar are released along it.
 */
export function release(k: Float64Array, fixed: readonly Float64Array[], released: readonly number[]): number[] {
  const size = Math.sqrt(k.length);
  const whole = Float64Array.from({ length: size }, (_, i) => k[i * size + i] ?? 0);
  const driven = new Set<number>();
  for (const r of released) {
    const pivot = k[r * size + r] ?? 0;
    const gone = pivot <= ROUNDING * (whole[r] ?? 0); // an earlier release already took all its stiffness
    fixed.forEach((f, column) => {
      if (gone && Math.abs(f[r] ?? 0) > ROUNDING * largest(f)) driven.add(column);
      if (!gone) subtract(f, k, r, size, (f[r] ?? 0) / pivot);
      f[r] = 0;
    });
    if (!gone) eliminate(k, r, size, pivot);
    clear(k, r, size);
  }
  for (let i = 0; i < size; i++) if ((k[i * size + i] ?? 0) <= ROUNDING * (whole[i] ?? 0)) clear(k, i, size);
  return [...driven];
}

const ROUNDING = roundingBound(64); // operations behind one entry of a released member stiffness

function subtract(f: Float64Array, k: Float64Array, r: number, size: number, factor: number): void {
  for (let i = 0; i < size; i++) f[i] = (f[i] ?? 0) - (k[i * size + r] ?? 0) * factor;
}

function eliminate(k: Float64Array, r: number, size: number, pivot: number): void {
  const column = Float64Array.from({ length: size }, (_, i) => k[i * size + r] ?? 0);
  for (let i = 0; i < size; i++) {
    const factor = (column[i] ?? 0) / pivot;
    if (factor === 0) continue;
    for (let j = 0; j < size; j++) k[i * size + j] = (k[i * size + j] ?? 0) - factor * (column[j] ?? 0);
  }
}

function clear(k: Float64Array, r: number, size: number): void {
  for (let i = 0; i < size; i++) {
    k[i * size + r] = 0;
    k[r * size + i] = 0;
  }
}

function largest(f: Float64Array): number {
  return f.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}
