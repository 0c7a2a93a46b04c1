import { drawnSeats, STIFFENERS_MM } from "../seat-places.ts";
import type { Generator, Trial } from "../trial.ts";

/** Ever thicker plates in the bottom rails of the unit, over the seats drawn under them. */
export const stiffeners: Generator = ({ scheme, analysis, mark }) => {
  const underRails = drawnSeats(scheme, analysis, mark.elements[0] ?? "").filter(
    ({ contact: { fitting } }) => fitting === undefined,
  );
  const trials = STIFFENERS_MM.flatMap((thicknessMm): Trial[] => {
    const thinner = underRails.filter(({ seat: { stiffenerUm = 0 } }) => stiffenerUm < thicknessMm * 1000);
    if (thinner.length === 0) return [];
    return [
      {
        change: { kind: "stiffeners", seatIds: thinner.map(({ seat }) => seat.id), thicknessMm },
        operations: thinner.map(({ seat }) => ({
          kind: "seat.change",
          seat: { ...seat, stiffenerUm: thicknessMm * 1000 },
        })),
      },
    ];
  });
  return trials.length === 0 ? [] : [trials];
};
