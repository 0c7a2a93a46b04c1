import { placeContainer } from "@cornerway/engine";
import type { Container, Scheme } from "@cornerway/schema";
import { footprintsOverlap } from "./footprint.ts";

/**
 * Height in mm at which a unit comes to rest, nearest to `hintMm`: on the roof of a unit it lies over, or on the
 * ground. The scheme's own copy of the unit is left out.
 */
export function restHeightMm(scheme: Scheme, unit: Container, hintMm: number): number {
  const placed = placeContainer(unit);
  const roofs = scheme.containers
    .filter((other) => other.id !== unit.id)
    .map(placeContainer)
    .filter((other) => footprintsOverlap(placed, other))
    .map((other) => other.topZMm);
  const ground = scheme.site.groundZUm / 1000;
  return [ground, ...roofs].reduce((best, height) =>
    Math.abs(height - hintMm) < Math.abs(best - hintMm) ? height : best,
  );
}
