import type { Seat } from "@cornerway/schema";
import type { CheckBasis } from "../checks/check-basis.ts";
import { steels } from "../catalog/materials.ts";
import { demandAgainst, type Check } from "../checks/check.ts";
import { toMm } from "../units.ts";
import type { Building } from "../geometry/building.ts";
import { FLANGE_MM, plateUnder, type PlateUnder } from "./drawn-seat.ts";
import { forcePart } from "./force-part.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { StrengthPart } from "./strength-part.ts";

/** The plate of every drawn seat, pressed flat between two rails, or a rail and a fitting, and bent where it spreads what comes down. */
export function seatParts(
  bearings: readonly ModelledBearing[],
  seats: readonly Seat[],
  building: Building,
  basis: CheckBasis,
): StrengthPart[] {
  const byId = new Map(seats.map((seat) => [seat.id, seat]));
  return bearings.flatMap((bearing): StrengthPart[] => {
    const seat = bearing.planned.seatId === undefined ? undefined : byId.get(bearing.planned.seatId);
    if (seat === undefined) return [];
    const plate = plateUnder(bearing, seat, building);
    const areaMm2 = toMm(seat.lengthUm) * Math.min(toMm(seat.widthUm), FLANGE_MM);
    return [
      forcePart(
        { ownerId: bearing.ownerId, element: "seat", place: `plate of ${seat.tag}`, level: "strength" },
        (solved) => bearingForce(bearing, solved)[2],
        (forceN, steel) => [
          demandAgainst(
            { element: "seat", limitState: "bearing on steel" },
            forceN,
            basis.joints.steelBearing(steel, areaMm2),
          ),
          ...(plate === undefined ? [] : [bentPlate(forceN, { ...plate, thicknessMm: toMm(seat.packingUm) }, basis)]),
        ],
      ),
    ];
  });
}

const bentPlate = (
  forceN: number,
  plate: PlateUnder & { readonly thicknessMm: number },
  { joints }: CheckBasis,
): Check =>
  demandAgainst(
    { element: "seat", limitState: "plate bending" },
    forceN,
    joints.spreadingPlateBending({ ...plate, steel: steels.plate }),
  );
