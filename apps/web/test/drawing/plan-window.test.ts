import { planModel } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { outlineEdges, planWindow, withinWindow } from "../../src/drawing/plan/plan-window.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

/** G1 along the ground, 12.192 × 2.438 m about the origin; F1 turned across it, its middle 4 m to the north. */
const across = (turnDeg: number) => schemeOf([unitAt("f1", "F1", 0, 4000, 2896, turnDeg), unitAt("g1", "G1", 0, 0, 0)]);

describe("planWindow(scheme, storey)", () => {
  // G1 reaches 1.219 m to either side; F1 from 4 − 6.096 = −2.096 m to 10.096 m: followed to 1.219 + 1.5 = 2.719 m.
  it("follows a unit overhead 1.5 m past what is cut", () => {
    expect(planWindow(across(90), 0)).toEqual({ uLow: -6096, uHigh: 6096, vLow: -2096, vHigh: 2719 });
  });

  // G1's ends are 6.096 m from the origin; F1 lies 6 m to the east, as far as 12.096 m to the side of G1.
  it("follows one farther to the side, where a plan has more room", () => {
    const beside = schemeOf([unitAt("f1", "F1", 6000, 0, 2896), unitAt("g1", "G1", 0, 0, 0)]);
    expect(planWindow(beside, 0)?.uHigh).toBe(6096 + 4500);
    const nearer = schemeOf([unitAt("f1", "F1", 3000, 0, 2896), unitAt("g1", "G1", 0, 0, 0)]);
    expect(planWindow(nearer, 0)?.uHigh).toBe(9096);
  });

  it("shows a unit askew whole", () => {
    const window = planWindow(across(30), 0);
    // Half of 12.192 m at 30° rises 3.048 m, half of 2.438 m at 30° 1.056 m: 4 + 4.104 m.
    expect(window?.vHigh).toBeCloseTo(8104, 0);
  });

  it("is that of all that is seen where the storey has no unit", () => {
    expect(planWindow(schemeOf([unitAt("g1", "G1", 0, 0, 0)]), 1)).toEqual(
      planWindow(schemeOf([unitAt("g1", "G1", 0, 0, 0)]), 0),
    );
    expect(planWindow(schemeOf([]), 0)).toBeNull();
  });
});

describe("withinWindow(model, window)", () => {
  it("breaks the unit overhead off at the window, on that edge alone", () => {
    const scheme = across(90);
    const { overhead } = withinWindow(planModel(scheme, 0), planWindow(scheme, 0));
    const [unit] = overhead;
    if (unit === undefined) throw new Error("F1 lies overhead");
    expect(Math.max(...unit.outline.map(({ vMm }) => vMm))).toBe(2719);
    const broken = outlineEdges(unit).filter((edge) => edge.broken);
    expect(broken.map(({ from, to }) => [from.vMm, to.vMm])).toEqual([[2719, 2719]]);
  });

  it("leaves what lies within as it is", () => {
    const scheme = schemeOf([unitAt("f1", "F1", 1000, 0, 2896), unitAt("g1", "G1", 0, 0, 0)]);
    const model = planModel(scheme, 0);
    expect(withinWindow(model, planWindow(scheme, 0))).toEqual(model);
  });
});
