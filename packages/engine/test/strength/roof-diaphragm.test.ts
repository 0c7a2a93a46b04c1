import { describe, expect, it } from "vitest";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { axes, drawnUnit } from "./drawn-unit.ts";
import { oneRun, ownWeight } from "./one-run.ts";

const scheme = drawnUnit({});
const push: ActionCase = {
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN: 0, yN: 10_000, zN: 0 }],
};

/**
 * Statics: the door end is open and its frame soft, so 10 kN across the middle of the roof goes to the blind end in shear of the
 * roof over 2.259 m between its rails: 4.43 N/mm. What the door frame takes, a few parts in a hundred, is missing.
 */
describe("the roof of a 40 ft unit pushed across its middle", () => {
  const { worsts } = oneRun(scheme, [ownWeight(scheme, 200_000), push]);
  const roof = worsts.find(({ part }) => part.element === "roof sheet");
  if (roof === undefined) throw new Error("the roof is checked");
  const { screened } = governingOf(roof);

  it("carries the push to the blind end in shear", () => {
    const [check] = screened.checks();
    if (check?.ok !== true) throw new Error("the sheet has a strength");
    const flow = check.working.symbols.find(({ symbol }) => symbol === "demand")?.value ?? 0;
    const whole = 10_000 / (2 * axes["1AAA"].y);
    expect(flow / whole).toBeGreaterThan(0.9);
    expect(flow / whole).toBeLessThanOrEqual(1.001);
  });

  it("is held against the sheet's own strength, a bound", () => {
    expect(screened.limitState).toBe("sheet shear buckling");
    expect(screened.utilisation).toBeLessThan(0.2);
  });
});
