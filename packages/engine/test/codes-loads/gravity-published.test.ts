import { describe, expect, it } from "vitest";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import type { Occupancy } from "../../src/loads/occupancy.ts";

const { gravity, soil } = designBasisFor("IBC 2021");
const paPerPsf = 47.88025898;
const ft2 = 0.09290304;

// Published check values 6.2 (ASCE 7-16 Table 4.3-1, from memory), kPa as printed there.
const printed: readonly (readonly [Occupancy, number])[] = [
  ["dwelling", 1.92],
  ["sleeping room", 1.44],
  ["hotel room", 1.92],
  ["public corridor", 4.79],
  ["office", 2.4],
  ["lobby", 4.79],
  ["corridor above ground floor", 3.83],
  ["retail, ground floor", 4.79],
  ["retail, upper floor", 3.59],
  ["retail, wholesale", 6],
  ["assembly, fixed seats", 2.87],
  ["assembly, movable seats", 4.79],
  ["dining", 4.79],
  ["classroom", 1.92],
  ["stair", 4.79],
  ["light storage", 6],
  ["heavy storage", 11.97],
  ["roof", 0.96],
  ["roof garden", 4.79],
];

describe("occupancy loads", () => {
  it.each(printed)("of %s are the printed %d kPa, to its two places", (occupancy, kpa) => {
    expect(Math.abs(gravity.occupancy(occupancy).pressurePa / 1000 - kpa)).toBeLessThan(0.016);
  });

  it("add 0.72 kPa of partitions to offices alone", () => {
    expect(gravity.occupancy("office").partitionsPa / 1000).toBeCloseTo(0.72, 2);
    expect(gravity.occupancy("dwelling").partitionsPa).toBe(0);
  });

  // 1.5 × 40 psf = 60 psf; 1.5 × 100 = 150, cut at 100 psf
  it("of a deck are 1.5 times those of the room it serves, up to 4.79 kPa", () => {
    expect(gravity.occupancy("balcony or deck", 40 * paPerPsf).pressurePa).toBeCloseTo(60 * paPerPsf, 3);
    expect(gravity.occupancy("balcony or deck", 100 * paPerPsf).pressurePa).toBeCloseTo(100 * paPerPsf, 3);
    expect(gravity.occupancy("balcony or deck").pressurePa).toBeCloseTo(100 * paPerPsf, 3);
  });
});

describe("reducedFloor", () => {
  // Published check values 6.2, derived: 50·(0.25 + 15/√(2·400)) = 50·(0.25 + 0.53033) = 39.0 psf
  it("gives 39.0 psf for 50 psf on 400 ft² with K_LL 2", () => {
    const l = gravity.reducedFloor({ pressurePa: 50 * paPerPsf, areaM2: 400 * ft2, elementFactor: 2, floors: 1 });
    expect(l.result.value / paPerPsf).toBeCloseTo(39.0165, 3);
    expect(l.certainty).toBe("memory");
  });

  it("leaves small areas alone and never takes more than half off one floor", () => {
    const at = (areaFt2: number) =>
      gravity.reducedFloor({ pressurePa: 50 * paPerPsf, areaM2: areaFt2 * ft2, elementFactor: 2, floors: 1 }).result
        .value / paPerPsf;
    expect(at(199)).toBeCloseTo(50, 6);
    expect(at(100_000)).toBeCloseTo(25, 6);
  });
});

describe("roofLive", () => {
  // R_1 = 1.2 − 0.001·400 = 0.8 → 16 psf; ≥ 600 ft²: 12 psf
  it("falls from 20 psf at 200 ft² over 16 psf at 400 to 12 psf at 600", () => {
    const at = (areaFt2: number) => gravity.roofLive(areaFt2 * ft2).result.value / paPerPsf;
    expect([100, 200, 400, 600, 5000].map((area) => Math.round(at(area) * 1e6) / 1e6)).toEqual([20, 20, 16, 12, 12]);
  });
});

describe("presumptive soil", () => {
  // Published check values 10.3, IBC Table 1806.2 as printed in kPa.
  it.each([
    ["crystalline bedrock", 575, 188, 0.7],
    ["sedimentary or foliated rock", 192, 63, 0.35],
    ["gravel", 144, 31, 0.35],
    ["sand", 96, 24, 0.25],
    ["clay or silt", 72, 16, undefined],
  ] as const)("of %s carries %d kPa and %d kPa per metre sideways", (ground, bearing, lateral, friction) => {
    const row = soil(ground);
    expect(Math.abs(row.bearingPa / 1000 - bearing)).toBeLessThan(0.6);
    expect(Math.abs(row.lateralPaPerM / 1000 - lateral)).toBeLessThan(0.6);
    expect(row.friction).toBe(friction);
  });
});
