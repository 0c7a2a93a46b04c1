import { describe, expect, it } from "vitest";
import { europeanColumn, type BucklingCurve } from "../../src/codes/steel/european-column.ts";

/** EN 1993-1-1 Table of χ; from memory, reproduced by the formula of 6.3.1.2. */
const printed: readonly (readonly [slenderness: number, curve: BucklingCurve, chi: number])[] = [
  [0.3, "a0", 0.9859],
  [0.3, "a", 0.9775],
  [0.3, "b", 0.9641],
  [0.3, "c", 0.9491],
  [0.3, "d", 0.9235],
  [0.7, "a0", 0.8961],
  [0.7, "a", 0.8477],
  [0.7, "b", 0.7837],
  [0.7, "c", 0.7247],
  [0.7, "d", 0.6431],
  [1, "a0", 0.7253],
  [1, "a", 0.6656],
  [1, "b", 0.597],
  [1, "c", 0.5399],
  [1, "d", 0.4671],
  [1.5, "a0", 0.3953],
  [1.5, "a", 0.3724],
  [1.5, "b", 0.3422],
  [1.5, "c", 0.3145],
  [1.5, "d", 0.2766],
];

describe("europeanColumn", () => {
  it.each(printed)("at slenderness %d on curve %s reduces to %d of squash", (slenderness, curve, chi) => {
    const lengthMm = slenderness * 10 * Math.PI * Math.sqrt(210e3 / 235);
    const { result } = europeanColumn({ curve, areaMm2: 1, radiusMm: 10, lengthMm, yieldMpa: 235, modulusMpa: 210e3 });
    expect(Math.abs(result.value / 235 - chi)).toBeLessThan(0.00006);
  });
});
