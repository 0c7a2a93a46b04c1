import type { Face } from "@cornerway/schema";
import type { BoxMm, BuildingFrame, UnitBox } from "./building-frame.ts";
import { LastMade } from "../numerics/last-made.ts";
import { uncovered, type Rect } from "./uncovered.ts";
import { windDirections, type WindDirection } from "./wind-shape.ts";

/** Which way a part of the envelope looks. */
export type Side = WindDirection | "up" | "down";

/**
 * A part of a unit's outside that meets the weather, in the building's axes: on ±x sides u runs along y, on ±y sides
 * along x, v is height; on roofs and undersides u runs along x, v along y. `atMm` is where its plane stands.
 */
export type ExposedFace = {
  readonly unit: UnitBox;
  readonly side: Side;
  readonly face: Face | undefined;
  readonly rect: Rect;
  readonly atMm: number;
};

/**
 * Every part of every unit that no neighbour covers. Undersides near the ground are sheltered by it and left out. Of a
 * unit not parallel to the axes all sides of its enclosing box count, covered or not.
 */
export const exposedFaces = (building: BuildingFrame): readonly ExposedFace[] =>
  exposed.take(building, [], () => facesOf(building));

const exposed = new LastMade<readonly ExposedFace[]>();

function facesOf(building: BuildingFrame): ExposedFace[] {
  return building.boxes.flatMap((unit) =>
    sides.flatMap((side) => {
      const plane = planeOf(unit, side);
      if (side === "down" && plane.atMm - building.groundZMm < opennessBelowMm) return [];
      const covers = building.boxes
        .filter((other) => other !== unit && near(unit, other, side))
        .map((other) => planeOf(other, side).rect);
      const open = unit.faces === undefined ? [plane.rect] : uncovered(plane.rect, covers);
      return open.map((rect) => ({ unit, side, face: faceAt(unit, side), rect, atMm: plane.atMm }));
    }),
  );
}

const sides: readonly Side[] = [...windDirections, "up", "down"];

/** Wind does not build up in a narrower gap: common practice, no published source. */
const gapMm = 300;
/** Clearance from which wind under the building counts: common practice, no published source. */
const opennessBelowMm = 600;

/** Whether the other box stands in front of this side, in it or close before it. */
function near(unit: BoxMm, other: BoxMm, side: Side): boolean {
  const distance = distanceTo(unit, other, side);
  return distance > -depthOf(other, side) && distance <= gapMm;
}

function distanceTo(unit: BoxMm, other: BoxMm, side: Side): number {
  switch (side) {
    case "+x":
      return other.x0 - unit.x1;
    case "-x":
      return unit.x0 - other.x1;
    case "+y":
      return other.y0 - unit.y1;
    case "-y":
      return unit.y0 - other.y1;
    case "up":
      return other.z0 - unit.z1;
    case "down":
      return unit.z0 - other.z1;
  }
}

function depthOf(box: BoxMm, side: Side): number {
  if (side === "+x" || side === "-x") return box.x1 - box.x0;
  return side === "+y" || side === "-y" ? box.y1 - box.y0 : box.z1 - box.z0;
}

export function planeOf(box: BoxMm, side: Side): { rect: Rect; atMm: number } {
  switch (side) {
    case "+x":
    case "-x":
      return { rect: { u0: box.y0, u1: box.y1, v0: box.z0, v1: box.z1 }, atMm: side === "+x" ? box.x1 : box.x0 };
    case "+y":
    case "-y":
      return { rect: { u0: box.x0, u1: box.x1, v0: box.z0, v1: box.z1 }, atMm: side === "+y" ? box.y1 : box.y0 };
    case "up":
    case "down":
      return { rect: { u0: box.x0, u1: box.x1, v0: box.y0, v1: box.y1 }, atMm: side === "up" ? box.z1 : box.z0 };
  }
}

function faceAt(unit: UnitBox, side: Side): Face | undefined {
  if (side === "up") return "roof";
  return side === "down" ? "floor" : unit.faces?.[side];
}
