import { placeContainer, toLocal } from "@cornerway/engine";
import type { Container, Face, PointMm } from "@cornerway/schema";

/** The wall of a unit that a point in plan is nearest to. */
export function nearestWall(unit: Container, at: PointMm): Face {
  const { dimensions, frame } = placeContainer(unit);
  const { xMm, yMm } = toLocal(frame, at);
  const gaps: [Face, number][] = [
    ["left", dimensions.widthMm / 2 - yMm],
    ["right", dimensions.widthMm / 2 + yMm],
    ["door", dimensions.lengthMm / 2 - xMm],
    ["front", dimensions.lengthMm / 2 + xMm],
  ];
  return gaps.reduce((best, next) => (next[1] < best[1] ? next : best))[0];
}
