import { fullestPlane, placeContainer, solidCorners, type SectionLine } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { seenOnPlan } from "../drawing/plan/seen-on-plan.ts";

/** How far a section's line runs past the building, mm. */
const pastMm = 300;

/** The line one begins with, as long as what the plan of a storey shows: through the most units, across the building, looking west, or along it, looking north. */
export function firstLine(scheme: Scheme, axis: "x" | "y", storey: number): SectionLine | null {
  const plane = fullestPlane(scheme, axis);
  if (plane === undefined) return null;
  const corners = seenOnPlan(scheme, storey).containers.flatMap((unit) => solidCorners(placeContainer(unit)));
  const places = corners.map((at) => (axis === "x" ? at.yMm : at.xMm));
  const [least, most] = [Math.min(...places) - pastMm, Math.max(...places) + pastMm];
  return axis === "x"
    ? { fromXMm: plane.atMm, fromYMm: least, toXMm: plane.atMm, toYMm: most }
    : { fromXMm: least, fromYMm: plane.atMm, toXMm: most, toYMm: plane.atMm };
}
