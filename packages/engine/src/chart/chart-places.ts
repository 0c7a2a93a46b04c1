import { STEP_MM } from "./chart.ts";

/** Columns are first this far apart, then half of it, until they are as near as they shall be, mm. */
const FIRST_APART_MM = 2400;

/**
 * Centres of the columns in the order they are traced: the one nearest to a place, then the widest apart first, those nearer to
 * it before others. They are measured from the middle of the side both ways, so that a mirrored side has mirrored places; mm from
 * the face's origin.
 */
export function chartPlaces(
  lengthMm: number,
  fromMm: number,
  toMm: number,
  apartMm: number,
  aboutMm = lengthMm / 2,
): number[] {
  const middle = lengthMm / 2;
  const isOn = (place: number): boolean => place >= fromMm && place <= toMm;
  const nearer = (a: number, b: number): number => Math.abs(a - aboutMm) - Math.abs(b - aboutMm);
  const places = [middle].filter(isOn);
  const taken = new Set([0]);
  for (let apart = FIRST_APART_MM; apart >= Math.max(apartMm, STEP_MM); apart /= 2) {
    const next: number[] = [];
    for (let off = apart; off <= middle; off += apart) {
      if (taken.has(off)) continue;
      taken.add(off);
      next.push(...[middle - off, middle + off].filter(isOn));
    }
    places.push(...next.toSorted(nearer));
  }
  const [first] = places.toSorted(nearer);
  return first === undefined ? [] : [first, ...places.filter((place) => place !== first)];
}
