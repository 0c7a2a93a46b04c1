import type { Generator, Trial } from "../trial.ts";
import { openingOfMark } from "./face-of-opening.ts";
import { areWideEnough, pierAtMm, PIERS_MM, twoOpenings } from "./two-openings.ts";

/** Two openings with a pier of wall left between them, which their width loses. */
export const leavePier: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || place.opening.face === "roof" || place.opening.face === "floor") return [];
  const { rect, opening } = place;
  const atMm = pierAtMm(place);
  const trials = PIERS_MM.flatMap((pierMm): Trial[] => {
    const first = { u0: rect.u0, u1: atMm - pierMm / 2 };
    const second = { u0: atMm + pierMm / 2, u1: rect.u1 };
    if (!areWideEnough(place, first, second)) return [];
    return [
      {
        change: { kind: "leave a pier", openingId: opening.id, pierMm },
        operations: twoOpenings(place, first, second, ground),
      },
    ];
  });
  return trials.length === 0 ? [] : [trials];
};
