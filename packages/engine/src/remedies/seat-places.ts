import type { Operation, Scheme, Seat } from "@cornerway/schema";
import { railOutline } from "../bearing/top-parts.ts";
import type { Contact } from "../bearing/contact.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { FreshNames } from "./fresh-names.ts";

/** A place where a unit comes down on a rail, or its own rail on a fitting. */
export type OffCorner = Contact & {
  readonly target: Extract<Contact["target"], { on: "rail" | "fitting" }>;
};

/** Where a unit comes down off its own corners, or on a rail. */
const offCorners = ({ bearings }: Analysis, unitId: string): OffCorner[] =>
  (bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? []).filter(
    (contact): contact is OffCorner =>
      contact.target.on === "rail" || (contact.target.on === "fitting" && contact.fitting === undefined),
  );

/** Such places with no seat drawn. */
export const bareSeats = (analysis: Analysis, unitId: string): OffCorner[] =>
  offCorners(analysis, unitId).filter(({ seatId }) => seatId === undefined);

/** Such places with the seat that is drawn there. */
export const drawnSeats = (
  { seats }: Scheme,
  analysis: Analysis,
  unitId: string,
): { readonly contact: OffCorner; readonly seat: Seat }[] =>
  offCorners(analysis, unitId).flatMap((contact) =>
    seats.filter(({ id }) => id === contact.seatId).map((seat) => ({ contact, seat })),
  );

/** How long a plate of this length can be there, µm: on a fitting no longer than that. */
export const seatLengthUm = ({ target }: OffCorner, lengthMm: number): number =>
  (target.on === "rail" ? lengthMm : Math.min(lengthMm, ON_FITTING_MM.length)) * 1000;

/** Length of a seat along the rail, mm, and of a plate in the web of the rail that comes down on it, where it has one. */
export type SeatSize = { readonly lengthMm: number; readonly stiffenerMm?: number };

/** A seat in the middle of the rail and as wide as the rail it lies on, its packing filling the gap. */
export function seatOn(
  { structure }: Analysis,
  names: FreshNames,
  contact: OffCorner,
  { lengthMm, stiffenerMm, heldDown }: SeatSize & { readonly heldDown: boolean },
): Operation {
  const { unitId, at, gapMm, target } = contact;
  const lower = structure.building.unitById.get(target.elementId);
  if (lower === undefined) throw new RangeError(`no container ${target.elementId} in this building`);
  const onRail = target.on === "rail" ? railOutline(lower, target.rail, target.uMm, target.uMm) : undefined;
  const [xMm, yMm] = onRail === undefined ? [at.xMm, at.yMm] : [onRail.cxMm, onRail.cyMm];
  return {
    kind: "seat.set",
    seat: {
      ...names.next("S"),
      ...{ upperId: unitId, lowerId: target.elementId, heldDown },
      ...{ xUm: Math.round(xMm * 1000), yUm: Math.round(yMm * 1000) },
      lengthUm: seatLengthUm(contact, lengthMm),
      widthUm: Math.round((onRail === undefined ? ON_FITTING_MM.width : lower.dimensions.topRailWidthMm) * 1000),
      packingUm: Math.round(Math.max(LEAST_PACKING_MM, gapMm) * 1000),
      ...(stiffenerMm !== undefined && contact.fitting === undefined && { stiffenerUm: stiffenerMm * 1000 }),
    },
  };
}

/** A plate that lies wholly on a fitting (178 × 162 mm, ISO 1161, from memory) under the axis of a rail, mm. */
const ON_FITTING_MM = { length: 140, width: 40 } as const;

/** Thinnest plate of a seat, mm: common practice, no published source. */
const LEAST_PACKING_MM = 6;

/** Plate lengths along the rail, mm, from the shortest: common practice, no published source. */
export const SEAT_LENGTHS_MM = [200, 300, 450] as const;

/** Plates in the web of a rail over a seat, mm, from the thinnest: common practice, no published source. */
export const STIFFENERS_MM = [6, 10, 12] as const;
