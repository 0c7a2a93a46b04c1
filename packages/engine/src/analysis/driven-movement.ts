import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { LoadVector } from "./solve-movement.ts";

/**
 * Of the movements nothing resists, the one in which the loads do most work, in the direction in which they do it; the first
 * where they do none that can be told from the rounding of the movements.
 */
export function drivenMovement(movements: readonly Float64Array[], { forces }: LoadVector): Float64Array | null {
  const [first] = movements;
  if (first === undefined) return null;
  const combined = new Float64Array(first.length);
  const total = forces.reduce((sum, force) => sum + Math.abs(force), 0);
  for (const movement of movements) {
    const unit = normalised(movement);
    const work = unit.reduce((sum, value, f) => sum + value * (forces[f] ?? 0), 0);
    const most = unit.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0);
    if (Math.abs(work) <= SOLUTION_ACCURACY * most * total) continue;
    unit.forEach((value, f) => (combined[f] = (combined[f] ?? 0) + work * value));
  }
  return combined.some((value) => value !== 0) ? combined : first;
}

function normalised(movement: Float64Array): Float64Array {
  const size = Math.sqrt(movement.reduce((sum, value) => sum + value * value, 0));
  return movement.map((value) => value / size);
}
