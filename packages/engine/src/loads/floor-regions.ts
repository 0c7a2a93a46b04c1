import type { FaceRect } from "../catalog/container-dimensions.ts";
import type { PlacedContainer } from "../geometry/place.ts";

/** A length of a unit's floor between two lines of bearing, or beyond the last one. */
export type FloorRegion = { readonly name: "span" | "front overhang" | "door overhang"; readonly rect: FaceRect };

/**
 * The floor of a unit cut at its outermost bearings: what they span, and what hangs over. `bearingsMm` are places along
 * the unit from its front end. Overhangs shorter than the fitting's own depth are the fitting.
 */
export function floorRegions({ dimensions }: PlacedContainer, bearingsMm: readonly number[]): FloorRegion[] {
  const whole = dimensions.face("floor");
  if (bearingsMm.length === 0) return [{ name: "span", rect: whole }];
  const first = Math.min(...bearingsMm);
  const last = Math.max(...bearingsMm);
  const front = first > dimensions.fitting.lengthMm ? first : 0;
  const door = last < whole.u1 - dimensions.fitting.lengthMm ? last : whole.u1;
  const regions: FloorRegion[] = [
    { name: "front overhang", rect: { ...whole, u1: front } },
    { name: "span", rect: { ...whole, u0: front, u1: door } },
    { name: "door overhang", rect: { ...whole, u0: door } },
  ];
  return regions.filter(({ rect }) => rect.u1 > rect.u0);
}
