import type { FactOf, Face } from "@cornerway/schema";
import { openingRect } from "../fabric/opening-rect.ts";
import type { Rail } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { alongBeam, beamTopMm, onBeam, type PlacedBeam } from "../geometry/placed-beam.ts";
import { clipLine, overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { alongRailMm } from "./post-footing.ts";
import { fittingOutline, railOutline } from "./top-parts.ts";

type Through = FactOf<"beam-through-unit">["through"];

/** The part of a unit a beam is drawn through; undefined where it passes by, lies in an opening or inside the room. */
export function beamThroughUnit(unit: Unit, beam: PlacedBeam): Through | undefined {
  if (overlapDepthMm(unit.outline, beam.outline) <= touchMm) return undefined;
  const { dimensions } = unit;
  const roofMm = dimensions.heightMm - dimensions.proudOfRoofMm;
  const span = heightOver(unit, beam, unit.outline);
  if (meets(span, 0, dimensions.heightMm) && fittingMet(unit, beam)) return "corner post";
  if (!meets(span, dimensions.baseAboveFittingMm, roofMm)) return undefined;
  for (const rail of rails) {
    const strip = railOutline(unit, rail, 0, isSide(rail) ? dimensions.lengthMm : dimensions.widthMm);
    if (overlapDepthMm(strip, beam.outline) <= touchMm) continue;
    const found = throughWall(unit, beam, rail, strip);
    if (found !== undefined) return found;
  }
  const floorMm = dimensions.sheetZone("left").v0;
  const ceilingMm = roofMm - dimensions.corrugationDepthMm.roof;
  const throughRoofOrFloor = meets(span, dimensions.baseAboveFittingMm, floorMm) || meets(span, ceilingMm, roofMm);
  return throughRoofOrFloor ? "sheet" : undefined;
}

const rails: readonly Rail[] = ["left", "right", "front", "door"];
const isSide = (rail: Rail): boolean => rail === "left" || rail === "right";

/** From the underside of its bottom fittings, mm. */
type Height = { readonly lowMm: number; readonly highMm: number };

const meets = ({ lowMm, highMm }: Height, fromMm: number, toMm: number): boolean =>
  Math.min(highMm, toMm) - Math.max(lowMm, fromMm) > touchMm;

/** The height a beam takes up over a part of a unit's plan. */
function heightOver({ baseZMm }: Unit, beam: PlacedBeam, rect: PlanRect): Height {
  const { from, to } = stretchOver(beam, rect);
  const tops = [beamTopMm(beam, from), beamTopMm(beam, to)];
  return { lowMm: Math.min(...tops) - beam.depthMm - baseZMm, highMm: Math.max(...tops) - baseZMm };
}

/** The part of a beam over a rectangle, mm along it; where only its edge is, the place nearest to the rectangle. */
function stretchOver(beam: PlacedBeam, rect: PlanRect): { from: number; to: number } {
  const cut = clipLine(rect, beam.from.xMm, beam.from.yMm, beam.to.xMm, beam.to.yMm);
  if (cut !== undefined) return { from: cut.from * beam.lengthMm, to: cut.to * beam.lengthMm };
  const { uMm } = alongBeam(beam, { xMm: rect.cxMm, yMm: rect.cyMm });
  return { from: uMm, to: uMm };
}

const fittingMet = (unit: Unit, beam: PlacedBeam): boolean =>
  unit.bottomFittings.some(
    ({ localXMm, localYMm }) => overlapDepthMm(fittingOutline(unit, localXMm, localYMm), beam.outline) > touchMm,
  );

function throughWall(unit: Unit, beam: PlacedBeam, rail: Rail, strip: PlanRect): Through | undefined {
  const { dimensions } = unit;
  const { v0, v1 } = dimensions.sheetZone(rail);
  const height = heightOver(unit, beam, strip);
  const roofMm = dimensions.heightMm - dimensions.proudOfRoofMm;
  if (meets(height, v1, roofMm)) return topOf[rail];
  if (meets(height, dimensions.baseAboveFittingMm, v0)) return bottomOf[rail];
  if (!meets(height, v0, v1)) return undefined;
  return inOpening(unit, beam, rail, strip, height) ? undefined : "sheet";
}

const topOf: Record<Rail, Through> = {
  left: "top side rail",
  right: "top side rail",
  front: "top end rail",
  door: "door header",
};
const bottomOf: Record<Rail, Through> = {
  left: "bottom side rail",
  right: "bottom side rail",
  front: "bottom end rail",
  door: "door sill",
};

function inOpening(unit: Unit, beam: PlacedBeam, face: Face & Rail, strip: PlanRect, height: Height): boolean {
  const { from, to } = stretchOver(beam, strip);
  const along = [alongRailMm(unit, face, onBeam(beam, from)), alongRailMm(unit, face, onBeam(beam, to))];
  return unit.openings.some((opening) => {
    const { u0, u1, v0, v1 } = openingRect(opening);
    return (
      opening.face === face &&
      Math.min(...along) >= u0 - touchMm &&
      Math.max(...along) <= u1 + touchMm &&
      height.lowMm >= v0 - touchMm &&
      height.highMm <= v1 + touchMm
    );
  });
}
