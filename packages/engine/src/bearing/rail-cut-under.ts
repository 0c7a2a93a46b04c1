import type { FaceRect } from "../catalog/container-dimensions.ts";
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
    const cut = cuts.find(({ opening, rect }) =>
      opening.face === "roof"
        ? takenFromRoof(below, rail, rect, uMm)
        : isOn(opening.face, rail) && takenFromFace(below, rail, rect, uMm),
    );
    if (cut !== undefined) return cut.opening.id;
  }
  return undefined;
}

const isOn = (face: string, rail: Rail): boolean => face === rail;

const takenFromFace = (below: Unit, rail: Rail, { u0, u1, v1 }: FaceRect, uMm: number): boolean =>
  v1 > below.dimensions.sheetZone(rail).v1 + touchMm && u0 <= uMm && uMm <= u1;

/** A roof opening takes a rail where it reaches past the roof sheet on that side; across the roof v is the way along an end. */
function takenFromRoof({ dimensions }: Unit, rail: Rail, { u0, u1, v0, v1 }: FaceRect, uMm: number): boolean {
  const roof = dimensions.sheetZone("roof");
  const alongSide = u0 <= uMm && uMm <= u1;
  const alongEnd = v0 <= uMm && uMm <= v1;
  switch (rail) {
    case "left":
      return alongSide && v1 > roof.v1 + touchMm;
    case "right":
      return alongSide && v0 < roof.v0 - touchMm;
    case "front":
      return alongEnd && u0 < roof.u0 - touchMm;
    case "door":
      return alongEnd && u1 > roof.u1 + touchMm;
  }
}
