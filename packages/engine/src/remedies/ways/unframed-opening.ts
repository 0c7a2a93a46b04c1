import type { Opening } from "@cornerway/schema";
import type { Generator, Trial } from "../trial.ts";
import { leastWidthMm, openingOfMark, toUm } from "./face-of-opening.ts";

/**
 * A framed opening of a wall left without its frame, as it is and then ever narrower about its middle: the sheet bears a small one by
 * itself. Whether the wall then still holds the building sideways is said by the strength run.
 */
export const unframedOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || !place.opening.framed || place.opening.use === "open-wall") return [];
  const { opening, rect } = place;
  if (opening.face !== "left" && opening.face !== "right" && opening.face !== "front") return [];
  const { framing: _frame, ...bare } = opening;
  const [wholeMm, middleMm] = [rect.u1 - rect.u0, (rect.u0 + rect.u1) / 2];
  const trials = SHARES.flatMap((share): Trial[] => {
    const widthMm = share === 1 ? wholeMm : Math.floor((wholeMm * share) / STEP_MM) * STEP_MM;
    if (widthMm < leastWidthMm[opening.use]) return [];
    const at = { offsetUm: toUm(middleMm - widthMm / 2), widthUm: toUm(widthMm) };
    const after: Opening = { ...bare, ...at, framed: false };
    return [
      {
        change: { kind: "leave unframed", openingId: opening.id, widthMm },
        operations: [{ kind: "opening.change", opening: after }],
      },
    ];
  });
  return trials.length === 0 ? [] : [trials];
};

/** Parts of its width that are kept, from the most. Judged, no published source: each is proved as it stands. */
const SHARES = [1, 0.8, 0.65, 0.5];
const STEP_MM = 50;
