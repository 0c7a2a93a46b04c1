import type { Face, Opening, Scheme } from "@cornerway/schema";
import { openingRect } from "../fabric/opening-rect.ts";
import type { BuildingFrame, UnitBox } from "./building-frame.ts";
import { planeOf, type Side } from "./exposed-faces.ts";
import { facePatch, even } from "./face-patch.ts";
import { windDirections } from "./wind-shape.ts";

/**
 * Units that share one body of air: joined by openings through which it passes. Windows are shut; doors count, for they
 * may stand open. Each group lists its units in the order of the scheme.
 */
export function compartments(building: BuildingFrame, scheme: Scheme): UnitBox[][] {
  const groups = new Map(building.boxes.map((box) => [box.id, box.id]));
  const rootOf = (id: string): string => {
    const next = groups.get(id) ?? id;
    return next === id ? id : rootOf(next);
  };
  for (const opening of scheme.openings.filter(({ use }) => use !== "window"))
    for (const [a, b] of joinedBy(building, opening)) groups.set(rootOf(b), rootOf(a));
  const roots = [...new Set(building.boxes.map(({ id }) => rootOf(id)))];
  return roots.map((root) => building.boxes.filter(({ id }) => rootOf(id) === root));
}

/** Which way a face of a unit looks in the building; undefined for a unit not parallel to its axes. */
export function sideOfFace(unit: UnitBox, face: Face): Side | undefined {
  if (face === "roof") return "up";
  if (face === "floor") return "down";
  return windDirections.find((side) => unit.faces?.[side] === face);
}

/** Units closer than this breathe together through an opening: common practice. */
const joinMm = 300;

function joinedBy(building: BuildingFrame, opening: Opening): [string, string][] {
  const unit = building.boxes.find(({ id }) => id === opening.containerId);
  const side = unit === undefined ? undefined : sideOfFace(unit, opening.face);
  if (unit === undefined || side === undefined) return [];
  const hole = openingRect(opening);
  return building.boxes
    .filter((other) => other !== unit && faceToFace(unit, other, side))
    .filter((other) => {
      const { atMm } = planeOf(unit, side);
      const { rect } = facePatch(building.axes, { unit, side, atMm }, planeOf(other, side).rect, even(0));
      return (
        Math.min(rect.u1, hole.u1) > Math.max(rect.u0, hole.u0) &&
        Math.min(rect.v1, hole.v1) > Math.max(rect.v0, hole.v0)
      );
    })
    .map((other): [string, string] => [unit.id, other.id]);
}

const opposite: Readonly<Record<Side, Side>> = {
  "+x": "-x",
  "-x": "+x",
  "+y": "-y",
  "-y": "+y",
  up: "down",
  down: "up",
};

const faceToFace = (unit: UnitBox, other: UnitBox, side: Side): boolean =>
  Math.abs(planeOf(other, opposite[side]).atMm - planeOf(unit, side).atMm) <= joinMm;
