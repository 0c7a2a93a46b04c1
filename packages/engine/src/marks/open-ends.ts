import type { OpenCorner } from "../bearing/contact.ts";

/** The ends of a unit that hang free at both corners: front, door or both. */
export const openEnds = (corners: readonly OpenCorner[]): ("front" | "door")[] =>
  (["front", "door"] as const).filter((end) =>
    (["right", "left"] as const).every((side) => corners.some(({ fitting }) => fitting === `${end}-${side}`)),
  );
