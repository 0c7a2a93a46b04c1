import { hypot } from "../numerics/elementary.ts";
import type { Unrolled, WallPoint } from "./unrolled.ts";

/** The centre line of a stroke is sampled at this pitch of the building, mm: 5 px where one metre is 50 px. */
const STEP_MM = 100;
/** Rounds of the 1-2-1 mean: what stands within about a strip of sheet is drawn into one line. */
const ROUNDS = 32;

/**
 * A tube runs from point to point of the model; its streamline is the mean over the strips it passes. A point moves only
 * to where there is sheet, so that no strand is drawn over an opening.
 */
export function smoothed(way: readonly WallPoint[], unrolled: Unrolled): WallPoint[] {
  let points = sampled(way);
  for (let round = 0; round < ROUNDS; round++)
    points = points.map((point, n) => {
      const [before, after] = [points[n - 1], points[n + 1]];
      if (before === undefined || after === undefined) return point;
      const mean = {
        sMm: (before.sMm + 2 * point.sMm + after.sMm) / 4,
        zMm: (before.zMm + 2 * point.zMm + after.zMm) / 4,
      };
      return unrolled.hasSheet(mean) ? mean : point;
    });
  return points;
}

function sampled(way: readonly WallPoint[]): WallPoint[] {
  return way.flatMap((from, n) => {
    const to = way[n + 1];
    if (to === undefined) return [from];
    const parts = Math.max(1, Math.ceil(hypot(to.sMm - from.sMm, to.zMm - from.zMm) / STEP_MM));
    return Array.from({ length: parts }, (_, k) => ({
      sMm: from.sMm + ((to.sMm - from.sMm) * k) / parts,
      zMm: from.zMm + ((to.zMm - from.zMm) * k) / parts,
    }));
  });
}
