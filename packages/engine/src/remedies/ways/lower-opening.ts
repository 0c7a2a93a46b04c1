import type { Generator, Trial } from "../trial.ts";
import { leastHeightMm, openingOfMark, shaped } from "./face-of-opening.ts";

/** A lower head leaves more sheet under the top rail. */
export const lowerOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || place.opening.face === "roof" || place.opening.face === "floor") return [];
  const { rect, opening } = place;
  const trials = STEPS_MM.flatMap((byMm): Trial[] =>
    rect.v1 - byMm - rect.v0 < leastHeightMm[opening.use]
      ? []
      : [
          {
            change: { kind: "lower opening", openingId: opening.id, byMm },
            operations: [shaped(place, { ...rect, v1: rect.v1 - byMm })],
          },
        ],
  );
  return trials.length === 0 ? [] : [trials];
};

const STEPS_MM = [100, 200, 400];
