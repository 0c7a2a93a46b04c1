import type { Building } from "../geometry/building.ts";
import type { UnitPoint } from "../model/unit-point.ts";
import { toMm } from "../units.ts";
import type { ModelledBearing } from "./modelled-bearings.ts";

/** The seat that is drawn at a bearing as one of its rails feels it: its length along that rail, mm, and the stiffener in the upper one. */
export type DrawnSeat = { readonly seatMm?: number; readonly stiffenerMm?: number };

/**
 * A seat lies along the member it lies on; the rail that comes down on it runs the same way or across. Nothing where none is
 * drawn.
 */
export function seatAt({ planned }: ModelledBearing, point: UnitPoint, building: Building): DrawnSeat {
  const seat = building.seats.find(({ id }) => id === planned.seatId);
  if (seat === undefined) return {};
  const [along, across] = [toMm(seat.lengthUm), toMm(seat.widthUm)];
  if (planned.above !== point) return { seatMm: along };
  const lower = "point" in planned.below ? runsEastWest(planned.below.point, building) : undefined;
  const upper = runsEastWest(point, building);
  const seatMm = lower === undefined ? Math.min(along, across) : lower === upper ? along : across;
  return { seatMm, ...(seat.stiffenerUm !== undefined && { stiffenerMm: toMm(seat.stiffenerUm) }) };
}

/** Whether the rail of a point runs more east and west than north and south; a fitting lies as its unit's length does. */
function runsEastWest(point: UnitPoint, { unitById }: Building): boolean {
  const turnMdeg = unitById.get(point.unitId)?.container.turnMdeg ?? 0;
  const lengthwise = Math.round(turnMdeg / QUARTER_MDEG) % 2 === 0;
  const onEnd = "seat" in point && (point.seat.side === "front" || point.seat.side === "door");
  return lengthwise !== onEnd;
}

const QUARTER_MDEG = 90_000;
