import type { BoxMm, BuildingFrame, UnitBox } from "../../loads/building-frame.ts";
import type { LinesOf } from "../../loads/seismic-cases.ts";
import type { LateralLine } from "../../loads/seismic-storey.ts";
import type { WindDirection } from "../../loads/wind-shape.ts";
import { usualAssumptions } from "../../model/model-assumptions.ts";
import type { JudgedWall } from "./unit-walls.ts";

/**
 * The lines counted as resisting in each storey, in the building's axes: every counted wall of every unit parallel to them,
 * as stiff as its counted sheet, with what carries it below.
 */
export function storeyLines(building: BuildingFrame, wallsOf: (unitId: string) => readonly JudgedWall[]): LinesOf {
  const ofUnit = (box: UnitBox): LateralLine[] =>
    wallsOf(box.id)
      .filter(({ counts }) => counts)
      .flatMap((wall) => lineOf(box, wall));
  const withBelow = (box: UnitBox): LateralLine[] =>
    ofUnit(box).map((line) => {
      const below = belowOf(line, box, building, ofUnit);
      return below === undefined ? line : { ...line, below };
    });
  return (unitIds) => building.boxes.filter(({ id }) => unitIds.includes(id)).flatMap(withBelow);
}

const directions: readonly WindDirection[] = ["+x", "-x", "+y", "-y"];

/** A unit that is not parallel to the building's axes has none: it is counted as skewed. */
function lineOf(box: UnitBox, { face, facts, heightMm, strengthN }: JudgedWall): LateralLine[] {
  const side = directions.find((direction) => box.faces?.[direction] === face);
  if (side === undefined) return [];
  const lengthMm = facts.piecesMm.reduce((sum, piece) => sum + piece, 0);
  const sheet = face === "left" || face === "right" ? usualAssumptions.sideSheet : usualAssumptions.frontSheet;
  return [
    {
      id: `${box.id} ${face}`,
      axis: side === "+y" || side === "-y" ? "x" : "y",
      atMm: { "+x": box.x1, "-x": box.x0, "+y": box.y1, "-y": box.y0 }[side],
      lengthMm,
      heightMm,
      stiffnessNPerMm: (sheet.shear * lengthMm) / heightMm,
      strengthN,
    },
  ];
}

/** Higher than this over the ground it stands on posts or beams, which are no continuation of a wall. */
const NEAR_GROUND_MM = 600;
/** Within the gaps between stacked units. */
const TOUCH_MM = 25;

function belowOf(
  line: LateralLine,
  box: UnitBox,
  { boxes, groundZMm }: BuildingFrame,
  linesOf: (box: UnitBox) => readonly LateralLine[],
): LateralLine["below"] {
  if (box.z0 - groundZMm < NEAR_GROUND_MM) return { kind: "ground" };
  const carriers = boxes.filter((lower) => Math.abs(lower.z1 - box.z0) < TOUCH_MM && laps(lower, box));
  const under = carriers
    .flatMap((lower) => linesOf(lower).filter(({ axis }) => axis === line.axis))
    .map(({ atMm, lengthMm }) => ({ offsetMm: Math.abs(atMm - line.atMm), lengthMm }))
    .toSorted((a, b) => a.offsetMm - b.offsetMm || b.lengthMm - a.lengthMm);
  const [nearest] = under;
  return nearest === undefined ? undefined : { kind: "line", ...nearest };
}

const laps = (a: BoxMm, b: BoxMm): boolean =>
  Math.min(a.x1, b.x1) > Math.max(a.x0, b.x0) && Math.min(a.y1, b.y1) > Math.max(a.y0, b.y0);
