import { mmToUm, type Scheme, type Seat } from "@cornerway/schema";
import { bearingPlaces, type BearingPlace } from "./bearing-places.ts";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";

/** Length of a seat's plate along the member it lies on; common practice, no published source. */
const lengthUm = 200_000;
const samePlaceMm = 150;
const leastPackingUm = 6000;

/** Places under a unit where no seat stands yet, in the order west to east, south to north. */
export const bareBearings = (scheme: Scheme, unitId: string): BearingPlace[] =>
  bearingPlaces(scheme, unitId)
    .filter(
      ({ lowerId, at }) =>
        !scheme.seats.some(
          (seat) =>
            seat.upperId === unitId &&
            seat.lowerId === lowerId &&
            Math.hypot(seat.xUm / 1000 - at.xMm, seat.yUm / 1000 - at.yMm) < samePlaceMm,
        ),
    )
    .toSorted((a, b) => a.at.xMm - b.at.xMm || a.at.yMm - b.at.yMm);

/** A seat at a place, its packing filling what is between the two. */
export const newSeat = (scheme: Scheme, { upperId, lowerId, at, gapMm, widthMm }: BearingPlace): Seat => ({
  id: newElementId("s"),
  tag: nextTag(scheme, "S"),
  upperId,
  lowerId,
  xUm: mmToUm(at.xMm),
  yUm: mmToUm(at.yMm),
  lengthUm,
  widthUm: mmToUm(widthMm),
  packingUm: Math.max(leastPackingUm, mmToUm(gapMm)),
  heldDown: false,
});
