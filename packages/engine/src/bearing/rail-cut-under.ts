import type { Rail } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { leastLapMm, touchMm } from "../geometry/tolerances.ts";
import { alongRailMm } from "./post-footing.ts";
import type { Structure } from "./structure.ts";
import { railOutline } from "./top-parts.ts";

/** The opening that took the piece of top rail a fitting at this place would have stood on, if one did. */
export function railCutUnder(
  { fabric }: Structure,
  below: Unit,
  at: { xMm: number; yMm: number },
  outline: PlanRect,
): string | undefined {
  const { lengthMm, widthMm } = below.dimensions;
  const cuts = fabric(below.id).cuts;
  for (const rail of ["left", "right", "front", "door"] as const) {
    const railLengthMm = rail === "left" || rail === "right" ? lengthMm : widthMm;
    if (overlapDepthMm(outline, railOutline(below, rail, 0, railLengthMm)) < leastLapMm) continue;
    const uMm = alongRailMm(below, rail, at);
    const top = below.dimensions.sheetZone(rail).v1 + touchMm;
    const cut = cuts.find(
      ({ opening, rect }) => isOn(opening.face, rail) && rect.v1 > top && rect.u0 <= uMm && uMm <= rect.u1,
    );
    if (cut !== undefined) return cut.opening.id;
  }
  return undefined;
}

const isOn = (face: string, rail: Rail): boolean => face === rail;
