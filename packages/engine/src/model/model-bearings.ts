import type { Building } from "../geometry/building.ts";
import type { PlacedBeam } from "../geometry/placed-beam.ts";
import type { ModelLink, ModelSupport, Triple } from "./analytical-model.ts";
import type { PlannedBearing } from "./bearing-plan.ts";
import { nodeName } from "./building-model.ts";
import { beamNodeOn, beamNodeUnder, bearingUnder, rollOf, undersideOf } from "./draw-beams.ts";
import type { ModelAssumptions } from "./model-assumptions.ts";
import type { UnitPoint } from "./unit-point.ts";

/** What tells where the points of bearings are, by name and in the site frame, mm. */
export type BearingPlaces = {
  readonly building: Pick<Building, "postById" | "beamById" | "locks">;
  readonly unit: (unitId: string) => {
    readonly node: (point: UnitPoint) => string;
    readonly at: (point: UnitPoint) => Triple;
  };
};

/** The node that bears. */
export function nameAbove(above: PlannedBearing["above"], { unit }: BearingPlaces): string {
  if ("post" in above) return nodeName(above.post, "foot");
  return "beam" in above ? beamNodeUnder(above) : unit(above.unitId).node(above);
}

/** The link of the bearing with this index in the plan; none on the ground. */
export function linkOf(
  { above, below, heldById }: PlannedBearing,
  index: number,
  places: BearingPlaces,
  { bearingStiffness: k }: ModelAssumptions,
): ModelLink[] {
  if ("ground" in below) return [];
  const i =
    "post" in below
      ? nodeName(below.post, "head")
      : "beam" in below
        ? beamNodeOn(below, index)
        : places.unit(below.point.unitId).node(below.point);
  const j = nameAbove(above, places);
  const beam = "beam" in above ? places.building.beamById.get(above.beam) : undefined;
  const stiffness: ModelLink["k"] = beam === undefined ? [0, 0, k, 0, 0, 0] : bearingUnder(beam, k);
  return [{ id: `${j}>${i}#${index + 1}`, i, j, k: stiffness, compression_only: heldById === undefined }];
}

/** Bearings on the ground, each node once. */
export function supportsOf(bearings: readonly PlannedBearing[], places: BearingPlaces): ModelSupport[] {
  const supports = new Map<string, ModelSupport>();
  for (const { above, below, heldById } of bearings) {
    if (!("ground" in below)) continue;
    const node = nameAbove(above, places);
    const known = supports.get(node);
    const pulls = heldById !== undefined || known?.compression_only === false;
    supports.set(node, { node, fix: fixedOf(above, places), compression_only: !pulls });
  }
  return [...supports.values()];
}

/** A post keeps from turning about its own axis, a beam from rolling about its own. */
function fixedOf(above: PlannedBearing["above"], { building }: BearingPlaces): ModelSupport["fix"] {
  if ("post" in above) return ["uz", "rz"];
  const beam = "beam" in above ? building.beamById.get(above.beam) : undefined;
  return beam === undefined ? ["uz"] : ["uz", rollOf(beam)];
}

/** The far side of a bearing of a beam: where an arm from its axis reaches to. */
export function beyondBeam(
  { above, below }: PlannedBearing,
  beam: PlacedBeam,
  { unit, building }: BearingPlaces,
): Triple {
  if ("beam" in above && above.beam === beam.id) {
    if ("point" in below) return unit(below.point.unitId).at(below.point);
    if ("post" in below) return postEnd(building, below.post, "headZMm");
    return undersideOf(beam, above);
  }
  if ("post" in above) return postEnd(building, above.post, "footZMm");
  if (!("beam" in above)) return unit(above.unitId).at(above);
  const upper = building.beamById.get(above.beam);
  if (upper === undefined) throw new RangeError(`no beam ${above.beam} in this building`);
  return undersideOf(upper, above);
}

function postEnd({ postById }: BearingPlaces["building"], id: string, end: "headZMm" | "footZMm"): Triple {
  const post = postById.get(id);
  if (post === undefined) throw new RangeError(`no post ${id} in this building`);
  return [post.xMm, post.yMm, post[end]];
}
