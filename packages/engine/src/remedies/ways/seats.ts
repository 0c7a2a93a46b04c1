import { FreshNames } from "../fresh-names.ts";
import { bareSeats, SEAT_LENGTHS_MM, seatOn, STIFFENERS_MM, type SeatSize } from "../seat-places.ts";
import type { Generator, Ladder, RemedyGround, Trial } from "../trial.ts";

/**
 * Seats with packing wherever the unit comes down on a rail without one: longer plates spread more, a stiffener spares the web, held
 * ones pull as well.
 */
export const seats: Generator = (ground) =>
  [false, true].flatMap((heldDown) => setSeats(ground, [...LENGTHS, LONG_AND_STIFFENED], heldDown));

/** The same for what strength says of a place: whatever lifts is held as the search goes on. */
export const plainSeats: Generator = (ground) => setSeats(ground, LENGTHS, false);

/** The shortest of them, with ever thicker stiffeners in the rail that comes down on them. */
export const stiffenedSeats: Generator = (ground) => setSeats(ground, STIFFENED, false);

const LENGTHS: readonly SeatSize[] = SEAT_LENGTHS_MM.map((lengthMm) => ({ lengthMm }));
const LONG_AND_STIFFENED: SeatSize = { lengthMm: SEAT_LENGTHS_MM[2], stiffenerMm: STIFFENERS_MM[1] };
const STIFFENED: readonly SeatSize[] = STIFFENERS_MM.map((stiffenerMm) => ({
  lengthMm: SEAT_LENGTHS_MM[0],
  stiffenerMm,
}));

function setSeats(
  { scheme, analysis, mark }: RemedyGround,
  sizes: readonly SeatSize[],
  heldDown: boolean,
): readonly Ladder[] {
  const unitId = mark.elements[0] ?? "";
  const bare = bareSeats(analysis, unitId);
  const pressesByItsRail = bare.some(({ fitting }) => fitting === undefined);
  const trials = sizes
    .filter(({ stiffenerMm }) => stiffenerMm === undefined || pressesByItsRail)
    .map((size): Trial => {
      const names = new FreshNames(scheme);
      return {
        change: { kind: "seats", unitId, places: bare.length, ...size, heldDown },
        operations: bare.map((contact) => seatOn(analysis, names, contact, { ...size, heldDown })),
      };
    });
  return bare.length === 0 || trials.length === 0 ? [] : [trials];
}
