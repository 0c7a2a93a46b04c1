import type { Scheme } from "@cornerway/schema";
import { storeysOf } from "../geometry/storeys.ts";
import type { ActionCase } from "./action-case.ts";
import { outlineOf, type BuildingFrame } from "./building-frame.ts";
import type { DesignBasis } from "./design-basis.ts";
import type { Irregularity } from "./irregularity.ts";
import { seismicLoads, type LevelForces } from "./seismic-loads.ts";
import type { SeismicForces, StoreyMass } from "./seismic-force.ts";
import type { Redundancy } from "./redundancy.ts";
import type { SeismicDesign } from "./seismic-site.ts";
import type { LateralLine, SeismicStorey } from "./seismic-storey.ts";
import { seismicStoreys } from "./seismic-storeys.ts";
import type { SystemPermit } from "./seismic-system.ts";
import { seismicWeights } from "./seismic-weights.ts";
import type { SiteHazards } from "./site-hazards.ts";
import type { Axis } from "./wind-shape.ts";
import type { Working } from "../working/working.ts";

/**
 * Earthquake on a building: what the site asks, whether each axis' system may stand, the forces, and the cases for
 * analysis.
 */
export type SeismicLoading = {
  readonly design: SeismicDesign;
  /** Seismic weight of each unit, in the order of the scheme. */
  readonly weights: readonly Working[];
  readonly axes: Readonly<Record<Axis, { readonly permit: SystemPermit; readonly forces: SeismicForces | undefined }>>;
  /** Empty along an axis whose system is refused. Factors (redundancy, overstrength) are not in them. */
  readonly cases: readonly ActionCase[];
  readonly storeys: readonly SeismicStorey[];
  readonly irregularities: readonly Irregularity[];
  readonly redundancy: Redundancy;
};

/**
 * The lines counted as resisting in the storey of these units, in the building's axes; none are known before the walls
 * are judged.
 */
export type LinesOf = (unitIds: readonly string[]) => readonly LateralLine[];

/**
 * Equivalent lateral forces on the real masses. A unit's mass counts at the roof of its storey (on the safe side for
 * turning over), the storeys are those of the scheme, the base is the ground.
 */
export function seismicCases(
  scheme: Scheme,
  building: BuildingFrame,
  basis: DesignBasis,
  hazards: SiteHazards,
  linesOf: LinesOf,
): SeismicLoading {
  const design = basis.seismic.design(hazards);
  const workings = seismicWeights(scheme, building, basis, hazards);
  const weights = new Map([...workings].map(([id, { result }]) => [id, result.value]));
  const levels = levelsOf(scheme, building, weights);
  const heightMm = building.outline.z1 - building.groundZMm;
  const along = (axis: Axis) => {
    const permit = basis.seismic.permit(scheme.basis.systems[axis], design.category, heightMm);
    if (!permit.permitted) return { permit, forces: undefined };
    const kind = permit.row.system.endsWith("moment frames") ? "steel moment frame" : "other";
    return {
      permit,
      forces: basis.seismic.forces(design, {
        r: permit.row.r,
        kind,
        heightMm,
        storeys: levels.map(({ mass }) => mass),
      }),
    };
  };
  const axes = { x: along("x"), y: along("y") };
  const storeys = seismicStoreys(scheme, building, weights, linesOf);
  const irregularities = basis.seismic.irregularities(design.category, storeys);
  const cases = seismicLoads(
    building,
    forcesOf(levels, weights, axes),
    eccentricities(basis, design, storeys),
    basis.seismic.orthogonalShare(design.category),
  );
  const redundancy = basis.seismic.redundancy(design.category, storeys, irregularities);
  return { design, weights: [...workings.values()], axes, cases, storeys, irregularities, redundancy };
}

/** The largest of all storeys, in parts of the width across the force. */
function eccentricities(
  basis: DesignBasis,
  design: SeismicDesign,
  storeys: readonly SeismicStorey[],
): Record<Axis, number> {
  const along = (axis: Axis) =>
    Math.max(...storeys.map((storey) => basis.seismic.accidentalEccentricity(design.category, storey, axis)));
  return { x: along("x"), y: along("y") };
}

type Level = { readonly mass: StoreyMass; readonly unitIds: readonly string[] };

function levelsOf(scheme: Scheme, building: BuildingFrame, weights: ReadonlyMap<string, number>): Level[] {
  return storeysOf(scheme).map(({ name, containerIds }) => {
    const { z1 } = outlineOf(building.boxes.filter(({ id }) => containerIds.includes(id)));
    const weightN = containerIds.reduce((sum, id) => sum + (weights.get(id) ?? 0), 0);
    return { mass: { id: name, heightMm: z1 - building.groundZMm, weightN }, unitIds: containerIds };
  });
}

function forcesOf(
  levels: readonly Level[],
  weights: ReadonlyMap<string, number>,
  axes: SeismicLoading["axes"],
): LevelForces[] {
  return levels.map(({ mass, unitIds }, at) => ({
    heightMm: mass.heightMm,
    units: unitIds.map((id) => ({ id, share: (weights.get(id) ?? 0) / mass.weightN })),
    xN: axes.x.forces?.storeys[at]?.forceN,
    yN: axes.y.forces?.storeys[at]?.forceN,
  }));
}
