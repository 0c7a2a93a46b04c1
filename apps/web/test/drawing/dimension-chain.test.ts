import { unitSystems } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dimensionChain } from "../../src/drawing/dimension/dimension-chain.ts";
import { drawnLength, drawnLevel } from "../../src/units/drawn-length.ts";
import { readLengthUm } from "../../src/units/length.ts";

describe("a dimension string", () => {
  it("adds up to the overall dimension written under it, whatever the places", () => {
    const places = fc.uniqueArray(fc.double({ min: -50_000, max: 50_000, noNaN: true }), {
      minLength: 2,
      maxLength: 12,
    });
    fc.assert(
      fc.property(places, (unsorted) => {
        const rising = unsorted.toSorted((a, b) => a - b);
        for (const units of unitSystems) {
          const readUm = (text: string) => {
            const read = readLengthUm(units === "SI" ? `${text} m` : text, units);
            return read.ok ? read.value : Number.NaN;
          };
          const sumUm = dimensionChain(rising, units).reduce((sum, { text }) => sum + readUm(text), 0);
          expect(drawnLength(sumUm / 1000, units)).toBe(
            dimensionChain([rising[0] ?? 0, rising.at(-1) ?? 0], units)[0]?.text,
          );
        }
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it("writes metres to the millimetre without unit", () => {
    expect(dimensionChain([0, 3000, 6134, 8572], "SI").map(({ text }) => text)).toEqual(["3.000", "3.134", "2.438"]);
  });

  it("writes feet and inches to the sixteenth", () => {
    // 3,000 mm = 118.110 in = 9'-10 1/8"; 8,572 mm = 5,399.7 sixteenths, 5,400 − 1,890 = 3,510 = 18'-3 3/8".
    expect(dimensionChain([0, 3000, 8572], "US").map(({ text }) => text)).toEqual([`9'-10 1/8"`, `18'-3 3/8"`]);
  });
});

describe("a level", () => {
  it("carries its sign, a true minus below the datum and none at it", () => {
    expect([2896, -450, 0.2].map((mm) => drawnLevel(mm, "SI"))).toEqual(["+2.896", "−0.450", "0.000"]);
    expect([2895.6, -457.2, 0.2].map((mm) => drawnLevel(mm, "US"))).toEqual([`+9'-6"`, `−1'-6"`, `0'-0"`]);
  });
});
