import { interpolate, type Point } from "../../interpolate.ts";

/** A band of a flat roof, distances from the windward edge in heights h. `to` of the last band is infinite. */
export type RoofCoefficient = {
  readonly from: number;
  readonly to: number;
  readonly most: number;
  readonly least: number;
};

/**
 * Fig. 27.3-1, roofs under 10°, from memory: two columns, h/L ≤ 0.5 and ≥ 1, values between by straight lines. The 1.3
 * of the first band is reduced with the area it acts on. The weaker value is −0.18 everywhere.
 */
export function flatRoofCoefficients(heightToLength: number, firstBandM2: number): RoofCoefficient[] {
  const areaFactor = interpolate(areaFactors, firstBandM2);
  return bands.map(({ from, to, low, tall }) => ({
    from,
    to,
    most: between(low, from === 0 ? tall * areaFactor : tall, heightToLength),
    least: leastSuction,
  }));
}

const leastSuction = -0.18;

const bands = [
  { from: 0, to: 0.5, low: -0.9, tall: -1.3 },
  { from: 0.5, to: 1, low: -0.9, tall: -0.7 },
  { from: 1, to: 2, low: -0.5, tall: -0.7 },
  { from: 2, to: Infinity, low: -0.3, tall: -0.7 },
] as const;

/** 100, 250 and 1000 ft² in m². */
const areaFactors: readonly Point[] = [
  [9.290304, 1],
  [23.22576, 0.9],
  [92.90304, 0.8],
];

const between = (low: number, tall: number, heightToLength: number): number =>
  interpolate(
    [
      [0.5, low],
      [1, tall],
    ],
    heightToLength,
  );
