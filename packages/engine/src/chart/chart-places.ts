import { STEP_MM } from "./chart.ts";

/** Columns are first this far apart, then half of it, until they are as near as they shall be, mm. */
const FIRST_APART_MM = 2400;

/**
 * Centres of the columns in the order they are traced, the widest apart first, measured from the middle of the side both ways,
 * so that a mirrored side has mirrored places; mm from the face's origin.
 */
export function chartPlaces(lengthMm: number, fromMm: number, toMm: number, apartMm: number): number[] {
  const middle = lengthMm / 2;
  const places = [middle].filter((place) => place >= fromMm && place <= toMm);
  const taken = new Set([0]);
  for (let apart = FIRST_APART_MM; apart >= Math.max(apartMm, STEP_MM); apart /= 2)
    for (let off = apart; off <= middle; off += apart) {
      if (taken.has(off)) continue;
      taken.add(off);
      for (const place of [middle - off, middle + off]) if (place >= fromMm && place <= toMm) places.push(place);
    }
  return places;
}
