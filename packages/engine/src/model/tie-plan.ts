import type { Tie } from "@cornerway/schema";
import { tiePlace, type FacePlace } from "../bearing/tie-place.ts";
import type { Building, Unit } from "../geometry/building.ts";
import type { Triple } from "./analytical-model.ts";
import { turned, turnOf } from "./turn.ts";
import type { UnitPoint } from "./unit-point.ts";
import type { SideName, TiedPlace } from "./unit-lines.ts";

/** Where a tie is made to a unit: at a fitting, or at a place of a member. */
export type TiedPoint =
  Extract<UnitPoint, { readonly corner: unknown }> | { readonly unitId: string; readonly tied: TiedPlace };

/** A tie that serves: one point of the gap, mm, site axes, and what it joins there. */
export interface PlannedTie {
  readonly tieId: string;
  readonly at: Triple;
  readonly ends: readonly [TiedPoint, TiedPoint];
  /** Across the gap, outwards from the first unit. */
  readonly across: Triple;
  readonly upright: boolean;
  /** In each direction it carries, N/mm; absent: that of the stated plate. */
  readonly stiffness?: number;
}

/** Every tie that meets fittings, posts or rails of both its units, in the scheme's order. */
export const plannedTies = (building: Building): PlannedTie[] =>
  building.ties.flatMap((tie) => {
    const place = tiePlace(building, tie);
    if ("why" in place) return [];
    const [onA, onB] = place.on;
    const [meetsA, meetsB] = place.meets;
    const upright = tie.carries === "in plan and upright";
    const end = (unitId: string, on: FacePlace, meets: typeof meetsA): TiedPoint =>
      tiedPoint(unitOf(building, unitId), on, meets, upright);
    return [
      {
        tieId: tie.id,
        at: [place.at.xMm, place.at.yMm, place.at.zMm],
        ends: [end(tie.aId, onA, meetsA), end(tie.bId, onB, meetsB)],
        across: outwards(unitOf(building, tie.aId), onA),
        upright,
        ...stiffnessOf(tie),
      },
    ];
  });

/** Out of a wall, site axes. */
function outwards({ frame }: Unit, { face }: FacePlace): Triple {
  const own: Record<FacePlace["face"], Triple> = {
    left: [0, 1, 0],
    right: [0, -1, 0],
    front: [-1, 0, 0],
    door: [1, 0, 0],
  };
  return turned(turnOf(frame.turnMdeg), own[face]);
}

const stiffnessOf = ({ stiffnessNPerMm }: Tie): Pick<PlannedTie, "stiffness"> =>
  stiffnessNPerMm === undefined ? {} : { stiffness: stiffnessNPerMm };

function unitOf({ unitById }: Building, unitId: string): Unit {
  const unit = unitById.get(unitId);
  if (unit === undefined) throw new RangeError(`no container ${unitId} in this building`);
  return unit;
}

type Meets = Extract<ReturnType<typeof tiePlace>, { readonly meets: unknown }>["meets"][number];

function tiedPoint(unit: Unit, { face, uMm, vMm }: FacePlace, meets: Meets, upright: boolean): TiedPoint {
  const { lengthMm, widthMm, heightMm, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = unit.dimensions;
  const onSide = face === "left" || face === "right";
  const [whole, spacing] = onSide ? [lengthMm, holeSpacingLengthwiseMm] : [widthMm, holeSpacingCrosswiseMm];
  const end = onSide ? (uMm < whole / 2 ? "front" : "door") : face;
  const side: SideName = onSide ? face : uMm < whole / 2 ? "right" : "left";
  const unitId = unit.id;
  if (meets === "corner fitting") return { unitId, corner: { end, side, level: vMm < heightMm / 2 ? "foot" : "head" } };
  const u = uMm - (whole - spacing) / 2;
  // a rail begins at the post's axis: what is tied to it nearer the end is tied to the post
  if (meets === "corner post" || u <= LEAST_MM || u >= spacing - LEAST_MM)
    return { unitId, tied: { end, side, zMm: vMm } };
  return { unitId, tied: { side: face, rail: meets === "top rail" ? "top" : "bottom", u, upright } };
}

/** Shorter lines are none. */
const LEAST_MM = 1;
