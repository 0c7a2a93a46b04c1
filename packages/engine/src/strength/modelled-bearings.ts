import type { Building } from "../geometry/building.ts";
import type { PlannedBearing } from "../model/bearing-plan.ts";
import type { UnitPoint } from "../model/unit-point.ts";
import { beamNodeUnder } from "../model/draw-beams.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { nodeName } from "../model/building-model.ts";

/** A bearing of the building with the name its force goes by in the solution. */
export type ModelledBearing = {
  readonly planned: PlannedBearing;
  /** The link, or the supported node. */
  readonly name: string;
  readonly on: "link" | "support";
  /** The unit, the free post or the beam that bears. */
  readonly ownerId: string;
  /** Short: which corner, or which rail at how many metres from the front post; of a beam, from its start. */
  readonly place: string;
};

/** Every planned bearing once; two that share a support are one. */
export function modelledBearings({ plan, model }: BuiltModel, building: Building): ModelledBearing[] {
  const links = [...model.links];
  const seen = new Set<string>();
  return plan.bearings.flatMap((planned): ModelledBearing[] => {
    const grounded = "ground" in planned.below;
    const name = grounded ? supportName(planned.above, building) : links.shift()?.id;
    if (name === undefined || seen.has(name)) return [];
    seen.add(name);
    const { above } = planned;
    return [
      {
        planned,
        name,
        on: grounded ? "support" : "link",
        ownerId: ownerOf(above),
        place: "post" in above ? "foot" : "beam" in above ? `at ${metres(above.uMm)} m` : placeOf(above),
      },
    ];
  });
}

/** Three forces on what bears, N, global axes; upwards is compression. */
export const bearingForce = (
  { name }: ModelledBearing,
  solved: { readonly bearing: (name: string) => readonly [number, number, number] },
): readonly [number, number, number] => solved.bearing(name);

export const placeOf = (point: UnitPoint): string =>
  "corner" in point
    ? `${point.corner.end} ${point.corner.side}`
    : `${point.seat.rail} rail ${point.seat.side} ${metres(point.seat.u)} m`;

const metres = (mm: number): string => (Math.round(mm / 10) / 100).toFixed(2);

function ownerOf(above: PlannedBearing["above"]): string {
  if ("post" in above) return above.post;
  return "beam" in above ? above.beam : above.unitId;
}

function supportName(above: PlannedBearing["above"], { unitById }: Building): string {
  if ("post" in above) return nodeName(above.post, "foot");
  if ("beam" in above) return beamNodeUnder(above);
  const unit = unitById.get(above.unitId);
  if (unit === undefined) throw new RangeError(`no container ${above.unitId} in this building`);
  const { holeSpacingLengthwiseMm: length, holeSpacingCrosswiseMm: width } = unit.dimensions;
  const side = "corner" in above ? above.corner.side : above.seat.side;
  const u = "corner" in above ? (above.corner.end === "front" ? 0 : length) : above.seat.u;
  const [x, y] = [u - length / 2, side === "left" ? width / 2 : -width / 2];
  return nodeName(above.unitId, `${tenths(x)},${tenths(y)},0.0`);
}

/** As the model names its nodes. */
const tenths = (value: number): string => (Math.round(value * 10) / 10 + 0).toFixed(1);
