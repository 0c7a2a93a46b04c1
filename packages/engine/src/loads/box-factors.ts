import type { BuildingFrame } from "./building-frame.ts";
import { exposedFaces } from "./exposed-faces.ts";
import type { ShapeLimit } from "./shape-limit.ts";
import { areaOf } from "./uncovered.ts";
import { windwardSideOf } from "./windward-side.ts";
import type { WindDirection } from "./wind-shape.ts";

/**
 * By how much pressures along each direction are raised where the enclosing box stands in for the real shape; 1
 * otherwise.
 */
export type BoxFactors = Readonly<Record<WindDirection, number>>;

/**
 * Where every shape limit holds, pressures act on the shape as it is. Where one fails, the enclosing box stands in for
 * it: pressures are raised until the exposed sides together take the box's whole wind, a stated substitute that does
 * not replace the engineer's judgement.
 */
export function boxFactors(building: BuildingFrame, limits: readonly ShapeLimit[]): BoxFactors {
  if (limits.every(({ holds }) => holds)) return { "+x": 1, "-x": 1, "+y": 1, "-y": 1 };
  const exposed = exposedFaces(building);
  const { outline, groundZMm } = building;
  const heightMm = outline.z1 - groundZMm;
  const factor = (direction: WindDirection) => {
    const across = direction === "+x" || direction === "-x" ? outline.y1 - outline.y0 : outline.x1 - outline.x0;
    const area = (side: WindDirection) =>
      exposed.filter((part) => part.side === side).reduce((sum, { rect }) => sum + areaOf(rect), 0);
    return Math.max(1, (across * heightMm) / area(windwardSideOf[direction]));
  };
  return { "+x": factor("+x"), "-x": factor("-x"), "+y": factor("+y"), "-y": factor("-y") };
}
