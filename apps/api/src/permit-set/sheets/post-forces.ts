import type { Assessment } from "@cornerway/schema";

/** The greatest force at the foot of each added post on the way down, kN, by its id. */
export function postForces({ path }: Assessment): Map<string, number> {
  const forces = new Map<string, number>();
  for (const { via, elementId, forceFootKn } of path)
    if (via === "added post") forces.set(elementId, Math.max(forceFootKn, forces.get(elementId) ?? -Infinity));
  return forces;
}
