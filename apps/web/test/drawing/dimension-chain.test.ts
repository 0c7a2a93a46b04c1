import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dimensionChain, level, metres, overallDimension } from "../../src/drawing/dimension/dimension-chain.ts";

describe("a dimension string", () => {
  it("adds up to the overall dimension written under it, whatever the places", () => {
    const places = fc.uniqueArray(fc.double({ min: -50_000, max: 50_000, noNaN: true }), {
      minLength: 2,
      maxLength: 12,
    });
    fc.assert(
      fc.property(places, (unsorted) => {
        const rising = unsorted.toSorted((a, b) => a - b);
        const sumMm = dimensionChain(rising).reduce((sum, { text }) => sum + Math.round(Number(text) * 1000), 0);
        expect(metres(sumMm)).toBe(overallDimension(rising)[0]?.text);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it("writes metres to the millimetre without unit", () => {
    expect(dimensionChain([0, 3000, 6134, 8572]).map(({ text }) => text)).toEqual(["3.000", "3.134", "2.438"]);
  });

  it("has no overall dimension where there is one place or none", () => {
    expect(overallDimension([])).toEqual([]);
    expect(overallDimension([4000])).toEqual([]);
  });
});

describe("a level", () => {
  it("carries its sign, a true minus below the datum and none at it", () => {
    expect([level(2896), level(-450), level(0.2)]).toEqual(["+2.896", "−0.450", "0.000"]);
  });
});
