import type { LoadVector, Movement } from "./solve-movement.ts";
import type { Bearing, Spring } from "./system.ts";

/** Pressure of a closed bearing, N, positive when it pushes the upper part up. */
export function bearingForce(bearing: Bearing, { movement, answered }: Movement, { forces }: LoadVector): number {
  if (bearing.kind === "support") return (answered[bearing.freedom] ?? 0) - (forces[bearing.freedom] ?? 0);
  return linkForce(bearing, movement);
}

/** Pressure of a closed link, N. */
export function linkForce({ stiffness, lower, upper }: Spring, movement: Float64Array): number {
  return stiffness * ((movement[lower] ?? 0) - (movement[upper] ?? 0));
}

/** Opening of an open bearing, mm, negative when the parts overlap. */
export function bearingGap(bearing: Bearing, { movement }: Movement, { settlement }: LoadVector): number {
  if (bearing.kind === "support") return (movement[bearing.freedom] ?? 0) - (settlement[bearing.freedom] ?? 0);
  return (movement[bearing.upper] ?? 0) - (movement[bearing.lower] ?? 0);
}

/** The load vector that holds bearings of the closed structure open by so much, in mm. */
export function openingLoad(bearings: readonly Bearing[], openingsMm: Float64Array, freedoms: number): LoadVector {
  const forces = new Float64Array(freedoms);
  const settlement = new Float64Array(freedoms);
  bearings.forEach((bearing, b) => {
    const opening = openingsMm[b] ?? 0;
    if (bearing.kind === "support") settlement[bearing.freedom] = opening;
    else {
      forces[bearing.upper] = (forces[bearing.upper] ?? 0) + bearing.stiffness * opening;
      forces[bearing.lower] = (forces[bearing.lower] ?? 0) - bearing.stiffness * opening;
    }
  });
  return { forces, settlement };
}
