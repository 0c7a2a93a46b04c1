import { drawnSeats, SEAT_LENGTHS_MM, seatLengthUm } from "../seat-places.ts";
import type { Generator, Trial } from "../trial.ts";

/** Seats that are drawn under the unit, ever longer along the rail they lie on; one that is as long already stays. */
export const longerSeats: Generator = ({ scheme, analysis, mark }) => {
  const drawn = drawnSeats(scheme, analysis, mark.elements[0] ?? "");
  const trials = SEAT_LENGTHS_MM.flatMap((lengthMm): Trial[] => {
    const longer = drawn.flatMap(({ contact, seat }) => {
      const lengthUm = seatLengthUm(contact, lengthMm);
      return lengthUm > seat.lengthUm ? [{ ...seat, lengthUm }] : [];
    });
    if (longer.length === 0) return [];
    const toMm = Math.max(...longer.map(({ lengthUm }) => lengthUm)) / 1000;
    return [
      {
        change: { kind: "longer seats", seatIds: longer.map(({ id }) => id), toMm },
        operations: longer.map((seat) => ({ kind: "seat.change", seat })),
      },
    ];
  });
  return trials.length === 0 ? [] : [trials];
};
