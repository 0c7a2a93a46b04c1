import type { Scheme } from "@cornerway/schema";
import { seatPlace, type SeatPlace } from "./bearing/seat-place.ts";
import { structureOf } from "./bearing/structure.ts";
import { tiePlace, type TiePlace } from "./bearing/tie-place.ts";
import { buildingOf } from "./geometry/building.ts";

/** Every seat of a scheme as it lies, in the order of the scheme, mm. */
export function seatPlaces(scheme: Scheme): SeatPlace[] {
  const structure = structureOf(buildingOf(scheme));
  return scheme.seats.map((seat) => seatPlace(structure, seat));
}

/** Every tie of a scheme with the gap it bridges and what it meets, or why it does not serve, in the order of the scheme. */
export function tiePlaces(scheme: Scheme): TiePlace[] {
  const building = buildingOf(scheme);
  return scheme.ties.map((tie) => tiePlace(building, tie));
}
