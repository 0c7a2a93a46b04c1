import type { PointMm } from "@cornerway/schema";
import { toLocal, type PlacedContainer } from "../geometry/place.ts";
import { STILL_MM } from "../numerics/tolerances.ts";

/** Clear of the thing's own unit before the line of sight begins, mm: the breadth of a fitting and a little. */
const clearMm = 220;
/** A unit hides what is behind it but for its edges, mm: seats and ties lie in the joints between units. */
const edgeMm = 30;

/** True when no unit stands between a place and the eye. */
export const isSeen = (units: readonly PlacedContainer[], at: PointMm, towards: PointMm): boolean =>
  !units.some((unit) => isHit(unit, at, towards));

/** Whether the line from a place towards the eye passes through a unit (slabs along the unit's own axes). */
function isHit({ frame, dimensions, topZMm, baseZMm }: PlacedContainer, at: PointMm, towards: PointMm): boolean {
  const start = toLocal(frame, {
    xMm: at.xMm + towards.xMm * clearMm,
    yMm: at.yMm + towards.yMm * clearMm,
    zMm: at.zMm + towards.zMm * clearMm,
  });
  const way = {
    xMm: towards.xMm * frame.cos + towards.yMm * frame.sin,
    yMm: towards.yMm * frame.cos - towards.xMm * frame.sin,
    zMm: towards.zMm,
  };
  const slabs = [
    slab(start.xMm, way.xMm, -dimensions.lengthMm / 2 + edgeMm, dimensions.lengthMm / 2 - edgeMm),
    slab(start.yMm, way.yMm, -dimensions.widthMm / 2 + edgeMm, dimensions.widthMm / 2 - edgeMm),
    slab(start.zMm, way.zMm, edgeMm, topZMm - baseZMm - edgeMm),
  ];
  const enters = Math.max(0, ...slabs.map(([from]) => from));
  const leaves = Math.min(...slabs.map(([, to]) => to));
  return enters < leaves;
}

/** Where a line is within two planes, as lengths along it. */
function slab(start: number, way: number, low: number, high: number): [number, number] {
  if (Math.abs(way) < STILL_MM) return start > low && start < high ? [-Infinity, Infinity] : [Infinity, -Infinity];
  const [a, b] = [(low - start) / way, (high - start) / way];
  return [Math.min(a, b), Math.max(a, b)];
}
