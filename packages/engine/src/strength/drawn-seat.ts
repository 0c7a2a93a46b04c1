import type { Seat } from "@cornerway/schema";
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

/** How a drawn plate is pressed along the member it lies on, mm: over its length from below, from above where a part comes down on it. */
export type PlateUnder = { readonly lengthMm: number; readonly widthMm: number; readonly pressedMm: number };

/** The lower flange of a bottom side rail, the narrowest a seat may press, mm; generic purchase specifications. */
export const FLANGE_MM = 30;
/** A top rail across, mm; generic purchase specifications. */
const TOP_RAIL_MM = 60;
/** A fitting along and across, mm; ISO 1161, from memory. */
const FITTING_MM = [178, 162] as const;

/** Undefined where the plate reaches no farther than what comes down on it: rails that run the same way, fittings on short plates. */
export function plateUnder(
  { planned: { above, below } }: ModelledBearing,
  seat: Seat,
  building: Building,
): PlateUnder | undefined {
  const [alongMm, acrossMm] = [toMm(seat.lengthUm), toMm(seat.widthUm)];
  const lower = "point" in below ? below.point : undefined;
  const upper = "unitId" in above ? above : undefined;
  if (upper === undefined) return undefined;
  // over a beam it is not looked for how it runs: as if rails crossed
  const crosses = lower === undefined || runsEastWest(lower, building) !== runsEastWest(upper, building);
  const onFitting = lower !== undefined && "corner" in lower;
  const lengthMm = onFitting ? Math.min(alongMm, FITTING_MM[0]) : alongMm;
  const widthMm = Math.min(acrossMm, onFitting ? FITTING_MM[1] : lower === undefined ? acrossMm : TOP_RAIL_MM);
  const pressedMm = "corner" in upper ? FITTING_MM[crosses ? 1 : 0] : crosses ? FLANGE_MM : lengthMm;
  return pressedMm < lengthMm ? { lengthMm, widthMm, pressedMm } : undefined;
}

/** Whether the rail of a point runs more east and west than north and south; a fitting lies as its unit's length does. */
function runsEastWest(point: UnitPoint, { unitById }: Building): boolean {
  const turnMdeg = unitById.get(point.unitId)?.container.turnMdeg ?? 0;
  const lengthwise = Math.round(turnMdeg / QUARTER_MDEG) % 2 === 0;
  const onEnd = "seat" in point && (point.seat.side === "front" || point.seat.side === "door");
  return lengthwise !== onEnd;
}

const QUARTER_MDEG = 90_000;
