import { describe, expect, it } from "vitest";
import { erectionStability } from "../../src/loads/stability/erection-stability.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis, windOf } from "./building-actions.ts";
import { idOf, sampleScheme } from "./sample-scheme.ts";

describe("erectionStability", () => {
  const row = sampleScheme([-2, -1, 0, 1, 2].map((at) => ({ type: "1AAA" as const, xMm: 0, yMm: at * 2438, zMm: 0 })));
  const combinations = basis.combinations({
    level: "allowable",
    present: new Set(["D", "W"]),
    halfCompanionLive: false,
    overstrength: false,
  });
  const stages = (mph: number) =>
    erectionStability(
      row,
      [[idOf(1)], [idOf(2), idOf(3)], [idOf(4), idOf(5)]],
      (standing) => windOf(standing, sampleHazards({ wind: { mph } })),
      combinations,
    );
  const whole = (mph: number) =>
    stages(mph).map(
      ({ findings }) =>
        findings.find(({ body, mode }) => body.id === "the whole" && mode === "turns over")?.working.utilisation ??
        Number.NaN,
    );

  it("judges the units that stand after each step, and no others", () => {
    expect(stages(115).map(({ number, unitIds }) => [number, unitIds.length])).toEqual([
      [1, 1],
      [2, 3],
      [3, 5],
    ]);
  });

  // The side of one 40 ft unit takes 45.6 kN whatever stands behind it, and its weight alone is 37.3 kN on half of 2.259 m; five of them stand on 12.0 m.
  it("finds the first unit alone in more danger than the row it becomes part of", () => {
    const [first = 0, , last = 0] = whole(115);
    expect(first).toBeGreaterThan(1);
    expect(last).toBeLessThan(first / 2);
  });

  // q grows with V²: twice the wind, four times the moment of wind; roof uplift is in it too, so the whole demand is wind (115 mph is more than the least wind)
  it("gives four times the overturning moment in twice the wind", () => {
    const [slow = 0] = whole(115);
    const [fast = 0] = whole(230);
    expect(fast / slow).toBeCloseTo(4, 6);
  });
});
