import { interpolate, type Point } from "../../interpolate.ts";

/** Fig. 27.3-1, external pressure coefficients of walls, from memory. */
export const windwardWall = 0.8;
export const sideWall = -0.7;

/** Leeward wall by the plan ratio L/B, length along the wind over width across it. */
export const leewardWall = (ratio: number): number => interpolate(leewardByRatio, ratio);

const leewardByRatio: readonly Point[] = [
  [1, -0.5],
  [2, -0.3],
  [4, -0.2],
];
