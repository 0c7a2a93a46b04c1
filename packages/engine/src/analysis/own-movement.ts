import type { CondensedUnit } from "./building-system.ts";
import { turnVectorBack } from "./turn-stiffness.ts";

/** Movements of the freedoms by which a container is joined to others, in its own axes, from those of the building's nodes. */
export function ownMovement(
  { firstNode, condensed: { freedoms }, turn }: Pick<CondensedUnit, "firstNode" | "condensed" | "turn">,
  movement: Float64Array,
): Float64Array {
  const own = new Float64Array(freedoms.length);
  for (let k = 0; k < own.length; k++) own[k] = movement[firstNode * 6 + (freedoms[k] ?? 0)] ?? 0;
  return turnVectorBack(own, turn);
}
