import type { CladdingPart, CladdingZone } from "../../../../loads/wind-pressures.ts";
import { interpolateLog, type Point } from "../../interpolate.ts";
import { squareFeet } from "../../us-units.ts";

/** External component coefficients, buildings up to 60 ft: towards the surface and away from it. */
export type CladdingCoefficients = { readonly inward: number; readonly outward: number };

/** Figs. 30.3-1 (walls) and 30.3-2A (flat roofs), from memory; charts read at effective areas in ft². */
export function claddingCoefficients({ surface, zone, effectiveAreaM2 }: CladdingPart): CladdingCoefficients {
  const area = squareFeet(effectiveAreaM2);
  if (surface === "roof")
    return { inward: interpolateLog(roofInward, area), outward: interpolateLog(roofOutward[zone], area) };
  const outward = zone === "middle" || zone === "inner" ? wallMiddle : wallEdge;
  return {
    inward: flatRoofShare * interpolateLog(wallInward, area),
    outward: flatRoofShare * interpolateLog(outward, area),
  };
}

/** Fig. 30.3-1 note 5: walls under roofs of 10° or less take 10 % off. */
const flatRoofShare = 0.9;

const wallInward: readonly Point[] = [
  [10, 1],
  [500, 0.7],
];
const wallMiddle: readonly Point[] = [
  [10, -1.1],
  [500, -0.8],
];
const wallEdge: readonly Point[] = [
  [10, -1.4],
  [500, -0.8],
];
const roofInward: readonly Point[] = [
  [10, 0.3],
  [100, 0.2],
];
const roofOutward: Readonly<Record<CladdingZone, readonly Point[]>> = {
  inner: [
    [100, -0.9],
    [1000, -0.4],
  ],
  middle: [
    [10, -1.7],
    [500, -1],
  ],
  edge: [
    [10, -2.3],
    [500, -1.4],
  ],
  corner: [
    [10, -3.2],
    [500, -1.4],
  ],
};
