import { describe, expect, it } from "vitest";
import { slipsWithin } from "../../src/analysis/slips-within.ts";

/** A bar of 5 kN/mm along x that two bearings hold against each other: what one slips, both feel. y of each is by itself. */
const bar = new Float64Array(16);
[bar[0], bar[2], bar[8], bar[10]] = [5000, -5000, -5000, 5000];
[bar[5], bar[15]] = [5000, 5000];
const asked = (left: number, right: number, most: readonly [number, number]) => ({
  ...{ stiffness: bar, slips: new Float64Array(4) },
  ...{ forces: Float64Array.of(left, 0, right, 0), most: Float64Array.from(most) },
});

// Coulomb by hand. Two bearings that hold a bar against each other cannot hold more than the weaker of them: that one slips until
// both hold its friction, by (H − F)/k; the other stays where it is.
describe("two bearings that hold a bar against each other with 50 kN", () => {
  it("stay where they are while both hold more", () => {
    expect([...(slipsWithin(asked(50_000, -50_000, [51_000, 60_000])) ?? [])]).toEqual([0, 0, 0, 0]);
  });

  it("slip where friction is the least, by (50 − 20)/5 = 6 mm against what it holds", () => {
    const [left = NaN, , right = NaN] = slipsWithin(asked(50_000, -50_000, [20_000, 30_000])) ?? [];
    expect(left).toBeCloseTo(-6, 6);
    expect(right).toBe(0);
  });

  it("slip on the other side where that is the weaker", () => {
    const [left = NaN, , right = NaN] = slipsWithin(asked(50_000, -50_000, [30_000, 20_000])) ?? [];
    // the first gives way at once, and goes back as the other does
    expect(5000 * (right - left)).toBeCloseTo(30_000, -3);
    expect(left).toBeCloseTo(0, 1);
  });
});

it("ends in nothing where what pushes is more than all friction", () => {
  expect(slipsWithin(asked(25_000, 25_000, [10_000, 10_000]))).toBeNull();
});
