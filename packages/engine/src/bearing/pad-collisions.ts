import { padsNear, type Building, type PlacedPad, type Unit } from "../geometry/building.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { fittingOutline } from "./top-parts.ts";

/** A pad drawn into a container; `depthMm` is the least move that would part them. */
export type PadCollision = { readonly unit: Unit; readonly pad: PlacedPad; readonly depthMm: number };

/**
 * Every pad that reaches into a container. Between the bottom fittings the base lies higher than they do, so that a pad
 * there may rise to the underside of a rail.
 */
export const padCollisionsOf = (building: Building): PadCollision[] =>
  building.units.flatMap((unit) =>
    padsNear(building, unit.outline)
      .map((pad) => ({ unit, pad, depthMm: padDepthMm(unit, pad) }))
      .filter(({ depthMm }) => depthMm > touchMm),
  );

function padDepthMm(unit: Unit, pad: PlacedPad): number {
  const highMm = Math.min(pad.topZMm, unit.topZMm);
  const aboveFittingsMm = highMm - Math.max(pad.topZMm - pad.depthMm, unit.baseZMm);
  if (aboveFittingsMm <= touchMm) return aboveFittingsMm;
  const intoFittingMm = Math.max(
    ...unit.bottomFittings.map(({ localXMm, localYMm }) =>
      overlapDepthMm(fittingOutline(unit, localXMm, localYMm), pad.outline),
    ),
  );
  const riseMm = intoFittingMm > touchMm ? 0 : unit.dimensions.baseAboveFittingMm;
  const inHeightMm = highMm - Math.max(pad.topZMm - pad.depthMm, unit.baseZMm + riseMm);
  return Math.min(inHeightMm, overlapDepthMm(unit.outline, pad.outline));
}
