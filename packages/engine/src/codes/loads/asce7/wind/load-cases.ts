import type { WindLoadCase } from "../../../../loads/wind-pressures.ts";
import type { WindDirection } from "../../../../loads/wind-shape.ts";

/**
 * Design wind load cases 1 to 4 of Fig. 27.3-8, from memory: each axis alone, each alone at 75 % with torsion, both at
 * 75 %, both at 56.3 % with torsion of one sense. Eccentricity is 15 % of the width; the two torsions of case 4 act in
 * the same sense, which contains the mixed ones.
 */
export function windLoadCases(): WindLoadCase[] {
  return [...single("1", 1, [0]), ...single("2", 0.75, [e, -e]), ...both("3", 0.75, [0]), ...both("4", 0.563, [e, -e])];
}

const e = 0.15;
const xs: readonly WindDirection[] = ["+x", "-x"];
const ys: readonly WindDirection[] = ["+y", "-y"];

const single = (id: string, factor: number, eccentricities: readonly number[]): WindLoadCase[] => [
  ...xs.flatMap((x) => eccentricities.map((at) => ({ id: named(id, x, at), x: part(x, factor, at), y: undefined }))),
  ...ys.flatMap((y) => eccentricities.map((at) => ({ id: named(id, y, at), x: undefined, y: part(y, factor, at) }))),
];

const both = (id: string, factor: number, eccentricities: readonly number[]): WindLoadCase[] =>
  xs.flatMap((x) =>
    ys.flatMap((y) =>
      eccentricities.map((at) => ({
        id: named(id, `${x}${y}`, at),
        x: part(x, factor, at),
        y: part(y, factor, at),
      })),
    ),
  );

const part = (direction: WindDirection, factor: number, eccentricity: number) => ({ direction, factor, eccentricity });

/** Positive eccentricity turns the building anticlockwise seen from above. */
const named = (id: string, direction: string, eccentricity: number): string => {
  if (eccentricity === 0) return `W${id} ${direction}`;
  return `W${id} ${direction} ${eccentricity > 0 ? "anticlockwise" : "clockwise"}`;
};
