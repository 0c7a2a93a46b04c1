import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { onPadsByHand, ordinarySchemes, withBothEnds } from "./ordinary-schemes/ordinary-schemes.ts";

const overhanging = ordinarySchemes["an overhang of 1 m"] ?? drawnUnit({});

describe("the top rail under the seats of an overhang of 1 m", () => {
  const answer = strength(withBothEnds(overhanging));
  const rails = answer.accepted ? answer.results.filter(({ id }) => id.startsWith("unit-01 top side rail ")) : [];
  const whole = rails.filter(({ id }) => id.endsWith(" left") || id.endsWith(" right"));

  it("is beyond its strength by bending, so that nothing but a stiffener, a post or a shorter overhang helps", () => {
    expect(whole).toHaveLength(2);
    for (const { limitState, utilisation = 0 } of whole) {
      expect(limitState).toBe("axial force with bending");
      expect(utilisation).toBeGreaterThan(1);
    }
  });
});

/**
 * Wind across the upper unit goes down by four welds, two at its front and two seats. Welds of one line share it, and what a seat
 * takes enters the rail at its foot, T = H × 90 mm about the line of the model. Wind on one side by hand: 105 mph in exposure B at
 * 5.8 m, 0.613 × 46.9² × 0.62 × 0.85 = 711 Pa, × 0.85 × 1.3 = 785 Pa on 12.192 × 2.896 m: 27.7 kN.
 */
describe("the bottom rail over the seats of an overhang of 1 m", () => {
  const answer = strength(onPadsByHand(overhanging));
  const rails = answer.accepted ? answer.results.filter(({ id }) => id.startsWith("unit-02 bottom side rail ")) : [];
  const beside = rails.filter(({ place }) => place.includes("beside what it stands on"));

  it("is twisted beside the seat alone, by more than an eighth and less than half of the wind on the unit's side", () => {
    expect(beside).toHaveLength(2);
    for (const { working } of beside) {
      const torqueNmm = working?.symbols.find(({ symbol }) => symbol === "T")?.value ?? NaN;
      expect(torqueNmm / 90).toBeGreaterThan(27_700 / 8);
      expect(torqueNmm / 90).toBeLessThan(27_700 / 2);
    }
  });

  it("is used less than twice, bending and all: nothing of it is twisted from end to end", () => {
    for (const { utilisation = Infinity } of rails) expect(utilisation).toBeLessThan(2);
  });
});
