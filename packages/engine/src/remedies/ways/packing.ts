import { jointTolerances } from "../../catalog/joint-tolerances.ts";
import type { Generator } from "../trial.ts";

/** Seats that are drawn and do not fill their gap, each packed to it. */
export const packing: Generator = ({ scheme, analysis, mark }) => {
  const contacts = analysis.bearings.find(({ unitId }) => unitId === mark.elements[0])?.contacts ?? [];
  return contacts.flatMap(({ seatId, gapMm }) => {
    const seat = scheme.seats.find(({ id }) => id === seatId);
    if (seat === undefined || Math.abs(gapMm) <= jointTolerances.contactGap.value) return [];
    const toMm = seat.packingUm / 1000 + gapMm;
    if (toMm <= 0) return [];
    const after = { ...seat, packingUm: Math.round(toMm * 1000) };
    return [
      [
        {
          change: { kind: "packing" as const, seatId: seat.id, toMm },
          operations: [{ kind: "seat.change" as const, seat: after }],
        },
      ],
    ];
  });
};
