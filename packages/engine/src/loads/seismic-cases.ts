import type { Scheme } from "@cornerway/schema";
import { storeysOf } from "../geometry/storeys.ts";
import type { ActionCase } from "./action-case.ts";
import { outlineOf, type BuildingFrame } from "./building-frame.ts";
import type { DesignBasis } from "./design-basis.ts";
import type { LoadingInputs } from "./loading-inputs.ts";
import { seismicLoads, type LevelForces } from "./seismic-loads.ts";
import type { SeismicForces, StoreyMass } from "./seismic-force.ts";
import type { SeismicDesign } from "./seismic-site.ts";
import type { SystemPermit } from "./seismic-system.ts";
import { seismicWeights } from "./seismic-weights.ts";
import type { SiteHazards } from "./site-hazards.ts";
import type { Axis } from "./wind-shape.ts";

/** Earthquake on a building: what the site asks, whether each axis' system may stand, the forces, and the cases for analysis. */
export type SeismicLoading = {
  readonly design: SeismicDesign;
  readonly weights: ReadonlyMap<string, number>;
  readonly axes: Readonly<Record<Axis, { readonly permit: SystemPermit; readonly forces: SeismicForces | undefined }>>;
  /** Empty along an axis whose system is refused. Factors (redundancy, overstrength) are not in them. */
  readonly cases: readonly ActionCase[];
};

/** Eccentricities of the mass per axis, in parts of the width across the force; the code's plain 5 % until storeys are described. */
export type Eccentricities = Readonly<Record<Axis, number>>;

/**
 * Equivalent lateral forces on the real masses. A unit's mass counts at the roof of its storey (on the safe side for turning over), the storeys are
 * those of the scheme, the base is the ground.
 */
export function seismicCases(
  scheme: Scheme,
  building: BuildingFrame,
  inputs: LoadingInputs,
  basis: DesignBasis,
  hazards: SiteHazards,
  eccentricities: Eccentricities,
): SeismicLoading {
  const design = basis.seismic.design(hazards);
  const weights = seismicWeights(scheme, building, inputs, basis, hazards);
  const levels = levelsOf(scheme, building, weights);
  const heightMm = building.outline.z1 - building.groundZMm;
  const along = (axis: Axis) => {
    const permit = basis.seismic.permit(inputs.systems[axis], design.category, heightMm);
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
  const orthogonal = basis.seismic.orthogonalShare(design.category);
  const cases = seismicLoads(building, forcesOf(levels, weights, axes), eccentricities, orthogonal);
  return { design, weights, axes, cases };
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
