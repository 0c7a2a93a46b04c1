import type { Scheme } from "@cornerway/schema";
import { storeysOf } from "../geometry/storeys.ts";
import { outlineOf, type BoxMm, type BuildingFrame, type UnitBox } from "./building-frame.ts";
import type { LateralLine, SeismicStorey } from "./seismic-storey.ts";
import { areaOf, uncovered, type Rect } from "./uncovered.ts";

/**
 * The storeys of a scheme as far as regularity is concerned: outline, masses, holes, re-entrant corners. `linesOf`
 * gives the lines counted as resisting in each storey, in the building's axes; lines of units not parallel to these are
 * counted as skewed.
 */
export function seismicStoreys(
  scheme: Scheme,
  building: BuildingFrame,
  weights: ReadonlyMap<string, number>,
  linesOf: (unitIds: readonly string[]) => readonly LateralLine[],
): SeismicStorey[] {
  return storeysOf(scheme).map(({ name, containerIds }) => {
    const units = building.boxes.filter(({ id }) => containerIds.includes(id));
    const outline = outlineOf(units);
    const plan: Rect = { u0: outline.x0, u1: outline.x1, v0: outline.y0, v1: outline.y1 };
    const outside = uncovered(
      plan,
      units.map(({ x0, x1, y0, y1 }) => ({ u0: x0, u1: x1, v0: y0, v1: y1 })),
    );
    const corner = deepestCorner(plan, outside);
    const weightN = units.reduce((sum, { id }) => sum + (weights.get(id) ?? 0), 0);
    return {
      id: name,
      heightMm: outline.z1 - outline.z0,
      weightN,
      centreXMm: weighted(units, weights, weightN, ({ x0, x1 }) => (x0 + x1) / 2),
      centreYMm: weighted(units, weights, weightN, ({ y0, y1 }) => (y0 + y1) / 2),
      outline: { x0Mm: outline.x0, x1Mm: outline.x1, y0Mm: outline.y0, y1Mm: outline.y1 },
      diaphragmMm2: areaOf(plan) - outside.reduce((sum, rect) => sum + areaOf(rect), 0),
      holesMm2: roofHoles(scheme, containerIds),
      reentrantXMm: corner.u1 - corner.u0,
      reentrantYMm: corner.v1 - corner.v0,
      skewedLines: units.filter(({ faces }) => faces === undefined).length,
      lines: linesOf(containerIds),
    };
  });
}

const weighted = (
  units: readonly UnitBox[],
  weights: ReadonlyMap<string, number>,
  whole: number,
  of: (box: BoxMm) => number,
): number => units.reduce((sum, box) => sum + of(box) * (weights.get(box.id) ?? 0), 0) / whole;

const roofHoles = (scheme: Scheme, containerIds: readonly string[]): number =>
  scheme.openings
    .filter(({ containerId, face }) => face === "roof" && containerIds.includes(containerId))
    .reduce((sum, { widthUm, heightUm }) => sum + (widthUm / 1000) * (heightUm / 1000), 0);

/**
 * The largest rectangle missing at a corner of the outline; nothing where none is. Corners cut in steps are taken by
 * their largest step.
 */
function deepestCorner(plan: Rect, outside: readonly Rect[]): Rect {
  const atCorner = outside.filter(
    ({ u0, u1, v0, v1 }) => (u0 === plan.u0 || u1 === plan.u1) && (v0 === plan.v0 || v1 === plan.v1),
  );
  return atCorner.reduce((deepest, rect) => (areaOf(rect) > areaOf(deepest) ? rect : deepest), {
    u0: 0,
    u1: 0,
    v0: 0,
    v1: 0,
  });
}
