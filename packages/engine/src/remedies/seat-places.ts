import type { Operation } from "@cornerway/schema";
import { railOutline } from "../bearing/top-parts.ts";
import type { Contact } from "../bearing/contact.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { FreshNames } from "./fresh-names.ts";

export type OnRail = Contact & { readonly target: Extract<Contact["target"], { on: "rail" }> };

/** Where a unit comes down on a rail with no seat drawn. */
export const bareRails = ({ bearings }: Analysis, unitId: string): OnRail[] =>
  (bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? []).filter(
    (contact): contact is OnRail => contact.target.on === "rail" && contact.seatId === undefined,
  );

/** A seat in the middle of the rail and as wide as the rail it lies on, its packing filling the gap. */
export function seatOn(
  { structure }: Analysis,
  names: FreshNames,
  { unitId, gapMm, target }: OnRail,
  { lengthMm, heldDown }: { readonly lengthMm: number; readonly heldDown: boolean },
): Operation {
  const lower = structure.building.unitById.get(target.elementId);
  if (lower === undefined) throw new RangeError(`no container ${target.elementId} in this building`);
  const { cxMm, cyMm } = railOutline(lower, target.rail, target.uMm, target.uMm);
  return {
    kind: "seat.set",
    seat: {
      ...names.next("S"),
      ...{ upperId: unitId, lowerId: target.elementId, heldDown },
      ...{ xUm: Math.round(cxMm * 1000), yUm: Math.round(cyMm * 1000) },
      lengthUm: lengthMm * 1000,
      widthUm: Math.round(lower.dimensions.topRailWidthMm * 1000),
      packingUm: Math.round(Math.max(LEAST_PACKING_MM, gapMm) * 1000),
    },
  };
}

/** Thinnest plate of a seat, mm: common practice, no published source. */
const LEAST_PACKING_MM = 6;

/** Plate lengths along the rail, mm, from the shortest: common practice, no published source. */
export const SEAT_LENGTHS_MM = [200, 300, 450] as const;
