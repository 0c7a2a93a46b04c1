import type { LoadVector } from "./solve-movement.ts";

/** Of the movements nothing resists, the one in which the loads do most work, in the direction in which they do it. */
export function drivenMovement(movements: readonly Float64Array[], { forces }: LoadVector): Float64Array | null {
  const [first] = movements;
  if (first === undefined) return null;
  const combined = new Float64Array(first.length);
  for (const movement of movements) {
    const unit = normalised(movement);
    const work = unit.reduce((sum, value, f) => sum + value * (forces[f] ?? 0), 0);
    unit.forEach((value, f) => (combined[f] = (combined[f] ?? 0) + work * value));
  }
  return combined.some((value) => value !== 0) ? combined : first;
}

function normalised(movement: Float64Array): Float64Array {
  const size = Math.sqrt(movement.reduce((sum, value) => sum + value * value, 0));
  return movement.map((value) => value / size);
}
