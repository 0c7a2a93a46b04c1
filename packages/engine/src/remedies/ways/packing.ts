import type { Seat } from "@cornerway/schema";
import { jointTolerances } from "../../catalog/joint-tolerances.ts";
import type { Generator, RemedyGround, Trial } from "../trial.ts";

/** Seats of a unit that are drawn and do not fill their gap, packed to it: one of them, the one the mark names, then all. */
export const packing: Generator = (ground) => {
  const open = unfilled(ground);
  const named = open.filter(({ seat }) => ground.mark.elements.includes(seat.id));
  const single = (named.length > 0 ? named : open).map((one) => [one]);
  const trials = [...single, ...(open.length > 1 ? [open] : [])].map(packed);
  return trials.length === 0 ? [] : [trials];
};

type Packed = { readonly seat: Seat; readonly toMm: number };

function unfilled({ scheme, analysis, mark }: RemedyGround): Packed[] {
  const unitId = mark.elements.find((id) => scheme.containers.some((unit) => unit.id === id));
  const contacts = analysis.bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? [];
  return contacts.flatMap(({ seatId, gapMm }): Packed[] => {
    const seat = scheme.seats.find(({ id }) => id === seatId);
    if (seat === undefined || Math.abs(gapMm) <= jointTolerances.contactGap.value) return [];
    const toMm = seat.packingUm / 1000 + gapMm;
    return toMm <= 0 ? [] : [{ seat, toMm }];
  });
}

function packed(seats: readonly Packed[]): Trial {
  const [first, ...others] = seats.map(({ seat: { id }, toMm }) => ({ kind: "packing", seatId: id, toMm }) as const);
  if (first === undefined) throw new RangeError("no seat to be packed");
  return {
    change: first,
    operations: seats.map(({ seat, toMm }) => ({
      kind: "seat.change",
      seat: { ...seat, packingUm: Math.round(toMm * 1000) },
    })),
    ...(others.length > 0 && { also: others }),
  };
}
