import { FreshNames } from "../fresh-names.ts";
import { bareSeats, SEAT_LENGTHS_MM, seatOn } from "../seat-places.ts";
import type { Generator, Trial } from "../trial.ts";

/** Seats with packing wherever the unit comes down on a rail without one: longer plates spread more, held ones pull as well. */
export const seats: Generator = ({ scheme, analysis, mark }) => {
  const unitId = mark.elements[0] ?? "";
  const bare = bareSeats(analysis, unitId);
  if (bare.length === 0) return [];
  return [false, true].map((heldDown) =>
    SEAT_LENGTHS_MM.map((lengthMm): Trial => {
      const names = new FreshNames(scheme);
      return {
        change: { kind: "seats", unitId, places: bare.length, lengthMm, heldDown },
        operations: bare.map((contact) => seatOn(analysis, names, contact, { lengthMm, heldDown })),
      };
    }),
  );
};
