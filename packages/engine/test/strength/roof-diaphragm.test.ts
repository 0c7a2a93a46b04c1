import { describe, expect, it } from "vitest";
import { axes } from "./drawn-unit.ts";
import { pushedRoof, roofFlow } from "./support/detail-answers.ts";

/**
 * Statics: the door end is open and its frame soft, so 10 kN across the middle of the roof goes to the blind end in shear of the
 * roof over 2.259 m between its rails: 4.43 N/mm. What the door frame takes is missing: little where its header is limp.
 */
describe("the roof of a 40 ft unit pushed across its middle", () => {
  const wholeNPerMm = 10_000 / (2 * axes["1AAA"].y);

  it("carries the push to the blind end in shear where the header over the doors is limp", () => {
    const share = roofFlow(1 / 1000) / wholeNPerMm;
    expect(share).toBeGreaterThan(0.95);
    expect(share).toBeLessThanOrEqual(1.001);
  });

  it("carries more than half of it there beside the header that is, and not all", () => {
    const share = roofFlow() / wholeNPerMm;
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(0.95);
  });

  it("is held against the sheet's own strength, a bound", () => {
    const { limitState, utilisation } = pushedRoof();
    expect(limitState).toBe("sheet shear buckling");
    expect(utilisation).toBeLessThan(0.2);
  });
});
