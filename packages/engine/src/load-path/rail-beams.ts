import { alongRailMm } from "../bearing/post-footing.ts";
import type { Structure } from "../bearing/structure.ts";
import type { Rail } from "../fabric/fabric-of.ts";
import { unitsNear } from "../geometry/building.ts";
import { beamTopMm, onBeam, type PlacedBeam } from "../geometry/placed-beam.ts";
import { clipLine, overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { leastCrossingSine, leastLapMm, mostPackingMm, touchMm } from "../geometry/tolerances.ts";

/** An added beam that runs along under a top rail or header of a unit and holds it up over a stretch of it, mm along the rail. */
export type RailBeam = {
  readonly beam: PlacedBeam;
  readonly unitId: string;
  readonly rail: Rail;
  readonly u0: number;
  readonly u1: number;
  /** The same two places along the beam, mm. */
  readonly beamU0: number;
  readonly beamU1: number;
};

/** The top rails this beam runs along from below, within the packing of a seat. */
export const railsAlong = ({ building, topParts }: Structure, beam: PlacedBeam): RailBeam[] =>
  unitsNear(building, beam.outline).flatMap((unit) =>
    topParts(unit.id).rails.flatMap(({ rail, outline }): RailBeam[] => {
      if (!runsAlong(beam, outline)) return [];
      const strip = { ...outline, halfUMm: outline.halfUMm + slackMm(beam), halfVMm: outline.halfVMm + slackMm(beam) };
      const shared = clipLine(strip, beam.from.xMm, beam.from.yMm, beam.to.xMm, beam.to.yMm);
      if (shared === undefined) return [];
      const places = [shared.from * beam.lengthMm, shared.to * beam.lengthMm] as const;
      const undersideMm = unit.baseZMm + unit.dimensions.sheetZone(rail).v1;
      const meets = places.every((uMm) => {
        const gapMm = undersideMm - beamTopMm(beam, uMm);
        return gapMm >= -touchMm && gapMm <= mostPackingMm;
      });
      if (!meets) return [];
      const [from, to] = places;
      const [u0, u1] = [alongRailMm(unit, rail, onBeam(beam, from)), alongRailMm(unit, rail, onBeam(beam, to))];
      const held = { beam, unitId: unit.id, rail };
      return u0 < u1
        ? [{ ...held, u0, u1, beamU0: from, beamU1: to }]
        : [{ ...held, u0: u1, u1: u0, beamU0: to, beamU1: from }];
    }),
  );

function runsAlong({ outline }: PlacedBeam, rail: PlanRect): boolean {
  const [ax, ay] = rail.halfUMm >= rail.halfVMm ? [rail.ux, rail.uy] : [-rail.uy, rail.ux];
  return Math.abs(outline.ux * ay - outline.uy * ax) < leastCrossingSine && overlapDepthMm(outline, rail) >= leastLapMm;
}

/** The axis of a beam may lie beside the rail by as much as still laps it. */
const slackMm = ({ widthMm }: PlacedBeam): number => Math.max(0, widthMm / 2 - leastLapMm);

/** How far along the beam a place of the rail above it lies, mm; past its stretch, the end of that. */
export function beamUnderMm({ u0, u1, beamU0, beamU1 }: RailBeam, uMm: number): number {
  const share = u1 === u0 ? 0 : (Math.max(u0, Math.min(u1, uMm)) - u0) / (u1 - u0);
  return beamU0 + share * (beamU1 - beamU0);
}
