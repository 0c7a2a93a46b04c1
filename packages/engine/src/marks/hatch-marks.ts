import type { Mark, Opening } from "@cornerway/schema";
import { unitsNear, type Building, type Unit } from "../geometry/building.ts";
import { openingRect } from "../fabric/opening-rect.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { overlapDepthMm, planRect, type PlanRect } from "../geometry/plan-rect.ts";
import { leastLapMm, mostPackingMm, touchMm } from "../geometry/tolerances.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** Openings in roof and floor that meet another unit where it is not cut, or not in line. Two out of line are told once. */
export const hatchMarks = (building: Building, unit: Unit): Mark[] =>
  unit.openings.flatMap((opening) => {
    if (opening.face !== "roof" && opening.face !== "floor") return [];
    const facing = opening.face === "roof" ? "floor" : "roof";
    return unitsMet(building, unit, opening).flatMap((other) => {
      const clearMm = clearWidthMm(unit, opening, other, facing);
      const isWhole = clearMm >= narrowMm(opening) - touchMm;
      const toldBelow = facing === "floor" && clearMm > touchMm;
      return isWhole || toldBelow ? [] : [hatchMark(unit, opening, other, facing, Math.max(0, clearMm))];
    });
  });

/** The units whose floor lies on this roof, or whose roof lies under this floor, within the packing of a seat. */
function unitsMet(building: Building, unit: Unit, opening: Opening): Unit[] {
  const outline = inPlan(unit, opening);
  return unitsNear(building, outline).filter((other) => {
    const gapMm = opening.face === "roof" ? other.baseZMm - unit.topZMm : unit.baseZMm - other.topZMm;
    const meets = gapMm >= -touchMm - unit.dimensions.proudOfRoofMm && gapMm <= mostPackingMm;
    return other.id !== unit.id && meets && overlapDepthMm(outline, other.outline) >= leastLapMm;
  });
}

/** An opening of roof or floor as it lies in the site. */
function inPlan(unit: Unit, opening: Opening): PlanRect {
  const { u0, u1, v0, v1 } = openingRect(opening);
  const x = unit.dimensions.lengthMm / 2;
  const y = unit.dimensions.widthMm / 2;
  return planRect(unit.frame, u0 - x, u1 - x, v0 - y, v1 - y);
}

/** The widest lap of this opening with one of the other unit's facing sheet; 0 or less where none meets it. */
function clearWidthMm(unit: Unit, opening: Opening, other: Unit, facing: "roof" | "floor"): number {
  const own = inPlan(unit, opening);
  const laps = other.openings
    .filter(({ face }) => face === facing)
    .map((theirs) => {
      const narrow = Math.min(narrowMm(opening), narrowMm(theirs));
      const lapMm = Math.min(overlapDepthMm(own, inPlan(other, theirs)), narrow);
      return lapMm >= narrow - touchMm ? narrowMm(opening) : lapMm;
    });
  return Math.max(0, ...laps);
}

/** The narrower side of an opening, mm. */
function narrowMm(opening: Opening): number {
  const { u0, u1, v0, v1 } = openingRect(opening);
  return Math.min(u1 - u0, v1 - v0);
}

function hatchMark(unit: Unit, opening: Opening, other: Unit, by: "roof" | "floor", clearMm: number): Mark {
  const { u0, u1, v0, v1 } = openingRect(opening);
  return markOf({
    fact: { kind: "hatch-blocked", by, clearMm: rounded(clearMm) },
    verdict: "not checked",
    certainty: "derived",
    elements: [opening.id, unit.id, other.id],
    at: pointOnFace(faceFrame(unit, opening.face), (u0 + u1) / 2, (v0 + v1) / 2),
    basis:
      "Geometry: openings of floor and roof that lie on each other, in plan. What the sheet left between them bears is not judged.",
  });
}
