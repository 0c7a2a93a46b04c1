import type { Generator } from "../trial.ts";
import { openingOfMark } from "./face-of-opening.ts";

/** The same opening cut once the unit stands, under shores: what it would not bear in the crane it does not have to. */
export const cutInPlace: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || place.opening.cut !== undefined) return [];
  const { opening } = place;
  return [
    [
      {
        change: { kind: "cut in place", openingId: opening.id },
        operations: [{ kind: "opening.change", opening: { ...opening, cut: "after shoring" } }],
      },
    ],
  ];
};
