import type { Operation, Scheme } from "@cornerway/schema";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { analyse, type Analysis } from "../load-path/analysis.ts";
import { FreshNames } from "./fresh-names.ts";
import { bareSeats, SEAT_LENGTHS_MM, seatOn } from "./seat-places.ts";

/**
 * Seats that pack what units come down on once a change is drawn: on posts and on rails at once, or on rails of two heights,
 * they would rock. None where all gaps of a unit are one.
 */
export function packedAfter(scheme: Scheme, unitIds: readonly string[]): Operation[] {
  if (unitIds.length === 0) return [];
  const analysis = analyse(scheme);
  const names = new FreshNames(scheme);
  return unitIds.flatMap((unitId) => packed(analysis, names, unitId));
}

function packed(analysis: Analysis, names: FreshNames, unitId: string): Operation[] {
  const contacts = analysis.bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? [];
  const gaps = contacts.map(({ gapMm, seatId }) => (seatId === undefined ? gapMm : 0));
  if (gaps.length === 0 || Math.max(...gaps) - Math.min(...gaps) <= jointTolerances.contactGap.value) return [];
  return bareSeats(analysis, unitId).map((contact) =>
    seatOn(analysis, names, contact, { lengthMm: SEAT_LENGTHS_MM[0], heldDown: false }),
  );
}
