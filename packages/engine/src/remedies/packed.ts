import type { Operation, Scheme } from "@cornerway/schema";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { analyse } from "../load-path/analysis.ts";
import { FreshNames } from "./fresh-names.ts";
import { bareSeats, SEAT_LENGTHS_MM, seatOn } from "./seat-places.ts";

/**
 * Seats that pack what a unit comes down on once a change is drawn: on posts and on rails at once, or on rails of two heights,
 * it would rock. None where all its gaps are one.
 */
export function packedAfter(scheme: Scheme, unitId: string): Operation[] {
  const analysis = analyse(scheme);
  const contacts = analysis.bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? [];
  const gaps = contacts.map(({ gapMm, seatId }) => (seatId === undefined ? gapMm : 0));
  if (gaps.length === 0 || Math.max(...gaps) - Math.min(...gaps) <= jointTolerances.contactGap.value) return [];
  const names = new FreshNames(scheme);
  return bareSeats(analysis, unitId).map((contact) =>
    seatOn(analysis, names, contact, { lengthMm: SEAT_LENGTHS_MM[0], heldDown: false }),
  );
}
