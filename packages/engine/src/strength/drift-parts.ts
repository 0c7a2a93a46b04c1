import type { Scheme } from "@cornerway/schema";
import { checkOf } from "../checks/check.ts";
import { serviceWind, windDrift, windDriftPart } from "../checks/deflection.ts";
import type { BuildingFrame } from "../loads/building-frame.ts";
import type { DesignBasis } from "../loads/design-basis.ts";
import { factorOf } from "../loads/load-combination.ts";
import type { SiteHazards } from "../loads/site-hazards.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { isEarthquake } from "./holds-needed.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import { leanOf, lengthOf } from "./movements.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import { unitCorners, type UnitCorner } from "./unit-corners.ts";

/** What drift is asked of: the site, and how far its systems' elastic movements are amplified. */
export type DriftBasis = { readonly hazards: SiteHazards; readonly cd: number; readonly loads: DesignBasis };

/** Undefined where the project has no hazards. The larger amplification of the two axes stands for both. */
export function driftBasis(scheme: Scheme, building: BuildingFrame, loads: DesignBasis): DriftBasis | undefined {
  const { hazards, systems } = scheme.basis;
  if (hazards === null) return undefined;
  const { category } = loads.seismic.design(hazards);
  const heightMm = building.outline.z1 - building.groundZMm;
  const cds = (["x", "y"] as const).map((axis) => loads.seismic.permit(systems[axis], category, heightMm).row.cd);
  return { hazards, loads, cd: Math.max(...cds) };
}

/**
 * Drift of a container as a storey of its own, at its worst corner, rocking and turning with it: in earthquakes with the
 * stability coefficient, in wind at service, from runs of allowable level.
 */
export function driftParts(unit: PlacedUnit, own: readonly ModelledBearing[], basis: DriftBasis): StrengthPart[] {
  const corners = unitCorners(unit);
  return [earthquakePart(unit.id, corners, own, basis), windPart(unit.id, corners)];
}

const named = (ownerId: string, place: string) =>
  ({ id: `${ownerId} building ${place}`, ownerId, element: "building", place }) as const;

function earthquakePart(
  ownerId: string,
  corners: readonly UnitCorner[],
  own: readonly ModelledBearing[],
  { hazards, cd, loads: { seismic } }: DriftBasis,
): StrengthPart {
  const storeyMm = heightOf(corners);
  const driftAt = (elasticMm: number) => seismic.drift(hazards, { elasticMm, storeyMm, cd });
  const stabilityAt = (elasticMm: number, verticalN: number, shearN: number) =>
    seismic.stability(hazards, { elasticMm, storeyMm, cd, verticalN, shearN });
  // both grow in proportion to the movement; the second to the load over the shear too
  const [perMm, perMmOfLoad] = [driftAt(1).utilisation ?? 0, stabilityAt(1, 1, 1).utilisation ?? 0];
  const stateOf = (solved: SolvedRun) => {
    const elasticMm = worstLean(corners, solved);
    const [verticalN, shearN] = forcesUnder(own, solved);
    const theta = shearN > NEWTON ? (perMmOfLoad * elasticMm * verticalN) / shearN : 0;
    return { elasticMm, verticalN, shearN, theta, use: Math.max(perMm * elasticMm, theta) };
  };
  return {
    ...named(ownerId, "drift in an earthquake"),
    level: "strength",
    use: (solved) => (isEarthquake(solved) ? stateOf(solved).use : 0),
    decide: (solved) => {
      const { elasticMm, verticalN, shearN, theta, use } = stateOf(solved);
      const subject = { element: "building", limitState: "drift" } as const;
      return {
        limitState: "drift",
        utilisation: use,
        checks: () => [
          checkOf(subject, driftAt(elasticMm)),
          ...(theta > 0 ? [checkOf(subject, stabilityAt(elasticMm, verticalN, shearN))] : []),
        ],
      };
    },
  };
}

function windPart(ownerId: string, corners: readonly UnitCorner[]): StrengthPart {
  const heightMm = heightOf(corners);
  return {
    ...named(ownerId, "drift in wind"),
    level: "allowable",
    use: (solved) => (factorOf(solved.run.combination, "W") === 0 ? 0 : driftUse(worstSway(corners, solved), heightMm)),
    decide: (solved) => {
      const driftMm = worstSway(corners, solved);
      return {
        limitState: "drift",
        utilisation: driftUse(driftMm, heightMm),
        checks: () => [windDrift(driftMm, heightMm)],
      };
    },
  };
}

const driftUse = (allowableMm: number, heightMm: number): number =>
  (serviceWind * allowableMm) / (windDriftPart * heightMm);

/** Less shears nothing. */
const NEWTON = 1;

const heightOf = (corners: readonly UnitCorner[]): number => Math.min(...corners.map(({ heightMm }) => heightMm));

const worstLean = (corners: readonly UnitCorner[], solved: SolvedRun): number =>
  corners.reduce((most, corner) => Math.max(most, lengthOf(leanOf(corner, solved))), 0);

/** What wind adds to the lean that is there without it. */
function worstSway(corners: readonly UnitCorner[], solved: SolvedRun): number {
  const alone = solved.gravityAlone();
  if (alone === undefined) return worstLean(corners, solved);
  return corners.reduce((most, corner) => {
    const [before, after] = [leanOf(corner, alone), leanOf(corner, solved)];
    return Math.max(most, lengthOf([after[0] - before[0], after[1] - before[1]]));
  }, 0);
}

/** What presses on the bearings of a container, and what they hold sideways, N. */
function forcesUnder(own: readonly ModelledBearing[], solved: SolvedRun): [number, number] {
  let [x, y, pressed] = [0, 0, 0];
  for (const bearing of own) {
    const [fx, fy, fz] = bearingForce(bearing, solved);
    x += fx;
    y += fy;
    pressed += Math.max(fz, 0);
  }
  return [pressed, lengthOf([x, y])];
}
