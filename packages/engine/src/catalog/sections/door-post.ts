import type { Certainty } from "@cornerway/schema";
import { lengthOf, thinWalledSection, type ThinWalledSection, type WallStrip } from "./thin-walled-section.ts";

/** The door corner post: a closed cell of two plates with a rolled channel as part of its inner wall. */
export type DoorPostSection = ThinWalledSection & {
  readonly name: string;
  readonly jMm4: number;
  readonly rMinMm: number;
  /** The cell on its centrelines, and the wall of its plates. */
  readonly cell: { readonly acrossMm: number; readonly alongMm: number; readonly wallMm: number };
  /** Flat of the wall that would buckle first. */
  readonly widestWall: { readonly widthMm: number; readonly thicknessMm: number };
  readonly source: string;
  readonly certainty: Certainty;
};

const wall = (x1: number, y1: number, x2: number, y2: number, thicknessMm: number): WallStrip => ({
  from: { xMm: x1, yMm: y1 },
  to: { xMm: x2, yMm: y2 },
  thicknessMm,
});

/** Cell 160 × 80 of 6 mm; in the middle of the inner wall the channel's 12 mm web, 113 long; its flanges, 28, outside. */
const cell = [
  wall(0, 0, 0, 160, 6),
  wall(0, 160, 80, 160, 6),
  wall(80, 160, 80, 136.5, 6),
  wall(80, 136.5, 80, 23.5, 12),
  wall(80, 23.5, 80, 0, 6),
  wall(80, 0, 0, 0, 6),
];
const flanges = [wall(80, 136.5, 108, 136.5, 12), wall(80, 23.5, 108, 23.5, 12)];

/** J of a single cell, 4 A²/Σ(L/t) (Bredt). */
const bredt = (enclosedMm2: number): number =>
  (4 * enclosedMm2 * enclosedMm2) / cell.reduce((total, side) => total + lengthOf(side) / side.thicknessMm, 0);

const plane = thinWalledSection([...cell, ...flanges]);

/** Assumed: the least certain member of a generic container. A post that governs needs a measured outline. */
export const doorPost: DoorPostSection = {
  ...plane,
  name: "door post, cell 160x80x6 with channel 113x40x12, assumed",
  jMm4: bredt(160 * 80),
  rMinMm: Math.sqrt(plane.iMinMm4 / plane.areaMm2),
  cell: { acrossMm: 80, alongMm: 160, wallMm: 6 },
  widestWall: { widthMm: 154, thicknessMm: 6 },
  source: "generic purchase specifications of dry containers; assumed until measured",
  certainty: "common practice",
};
