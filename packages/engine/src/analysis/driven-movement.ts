import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { LoadVector } from "./solve-movement.ts";
import { addTimes } from "./vectors.ts";

/**
 * Of the movements nothing resists, the one in which the loads do most work, in the direction in which they do it; the first
 * where they do none that can be told from the rounding of the movements. Of one movement alone, it or its opposite.
 */
export function drivenMovement(movements: readonly Float64Array[], { forces }: LoadVector): Float64Array | null {
  const [first, ...others] = movements;
  if (first === undefined) return null;
  let total = 0;
  for (let f = 0; f < forces.length; f++) total += Math.abs(forces[f] ?? 0);
  if (others.length === 0) return waysOf(first)[workOf(first, forces, total) < 0 ? 1 : 0];
  const combined = new Float64Array(first.length);
  let moves = false;
  for (const movement of movements) {
    const work = workOf(movement, forces, total);
    moves ||= work !== 0;
    addTimes(combined, waysOf(movement)[0], work);
  }
  return moves ? combined : first;
}

/** What the loads do along the movement made of size 1; 0 where that is rounding. */
function workOf(movement: Float64Array, forces: Float64Array, total: number): number {
  const [unit] = waysOf(movement);
  let work = 0;
  let most = 0;
  for (let f = 0; f < unit.length; f++) {
    const value = unit[f] ?? 0;
    work += value * (forces[f] ?? 0);
    most = Math.max(most, Math.abs(value));
  }
  return Math.abs(work) <= SOLUTION_ACCURACY * most * total ? 0 : work;
}

/** Made of size 1, forwards and backwards; many loads drive the same movement, which says the same of itself each time. */
function waysOf(movement: Float64Array): readonly [Float64Array, Float64Array] {
  const known = waysKnown.get(movement);
  if (known !== undefined) return known;
  let square = 0;
  for (let f = 0; f < movement.length; f++) square += (movement[f] ?? 0) * (movement[f] ?? 0);
  const size = Math.sqrt(square);
  const made = [new Float64Array(movement.length), new Float64Array(movement.length)] as const;
  for (let f = 0; f < movement.length; f++) {
    made[0][f] = (movement[f] ?? 0) / size;
    made[1][f] = -(movement[f] ?? 0) / size;
  }
  waysKnown.set(movement, made);
  return made;
}

const waysKnown = new WeakMap<Float64Array, readonly [Float64Array, Float64Array]>();
