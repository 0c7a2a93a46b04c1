import { unitsNear, type Building, type Unit } from "./building.ts";
import { overlapDepthMm } from "./plan-rect.ts";
import { touchMm } from "./tolerances.ts";

/** Two containers in one place; `depthMm` is the least move that would part them. */
export type Collision = { readonly one: Unit; readonly other: Unit; readonly depthMm: number };

/** Every pair of containers that reach into each other, each pair once, in the order of the scheme. */
export const collisionsOf = (building: Building): Collision[] =>
  building.units.flatMap((one) =>
    unitsNear(building, one.outline)
      .filter((other) => one.id < other.id)
      .map((other) => ({ one, other, depthMm: sharedDepthMm(one, other) }))
      .filter(({ depthMm }) => depthMm > touchMm),
  );

function sharedDepthMm(one: Unit, other: Unit): number {
  const inHeight = Math.min(one.topZMm, other.topZMm) - Math.max(one.baseZMm, other.baseZMm);
  return inHeight <= touchMm ? inHeight : Math.min(inHeight, overlapDepthMm(one.outline, other.outline));
}
