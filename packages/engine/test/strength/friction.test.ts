import type { Lock, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { assumptionSets, type AssumptionSet } from "../../src/strength/assumption-sets.ts";
import { bearingForce, modelledBearings } from "../../src/strength/modelled-bearings.ts";
import type { StrengthRun } from "../../src/strength/run-plan.ts";
import { solveSettling } from "../../src/strength/settling.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { pressed } from "./one-run.ts";

const [, tied = missing()] = assumptionSets;
const rubbing = (friction: number, more: Partial<Scheme> = {}): Scheme => {
  const drawn = drawnUnit({});
  return { ...drawn, ...more, basis: { ...drawn.basis, friction } };
};
const floor = pressed(drawnUnit({}), 5000);
const push = (xN: number): ActionCase => ({
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN, yN: 0, zN: 0 }],
});
const runOf = (cases: readonly ActionCase[], more: Partial<StrengthRun> = {}): StrengthRun => {
  const clause = { document: "", edition: "", place: "", certainty: "derived" } as const;
  const level = more.level ?? "strength";
  const factors = Object.fromEntries(cases.map(({ id }) => [id, 1]));
  return { id: "one", level, factors, combination: { id: "one", level, terms: [], clause }, ...more };
};

/** Level and upright force of every bearing, N. */
function held(
  scheme: Scheme,
  cases: readonly ActionCase[],
  { set = tied, more = {} }: { readonly set?: AssumptionSet; readonly more?: Partial<StrengthRun> } = {},
) {
  const analysis = analyse(inOrder(scheme));
  const { solved, built } = solveSettling(analysis, cases, [runOf(cases, more)], set, strengthMemory());
  const [run = missing()] = solved;
  expect(run.residual).toBeLessThan(1e-9);
  return modelledBearings(built, analysis.structure.building).map((bearing) => {
    const [x, y, up] = bearingForce(bearing, run);
    return { x, y, up, level: Math.sqrt(x * x + y * y) };
  });
}
const sum = (of: readonly { readonly x: number }[]): number => of.reduce((all, { x }) => all + x, 0);

// One 40 ft container on four pads, nothing drawn that holds it, 5.0 kPa on its floor: 149 kN on four fittings. Its bottom rails
// are the lower chords of its walls and want to stretch; pads that held both ends as locks do would keep them from it.
describe("a container that only bears on its pads", () => {
  const locked = held(rubbing(10), [floor]);

  it("would be held by more than a tenth of what presses, were it locked", () => {
    for (const { level, up } of locked) expect(level).toBeGreaterThan(0.15 * up);
  });

  it("is held at each pad by no more than friction, inwards at both ends, and without a level load in balance", () => {
    const rubs = held(rubbing(0.1), [floor]);
    for (const { level, up } of rubs) {
      expect(level).toBeLessThan(0.1 * up * 1.03 + 20);
      expect(level).toBeGreaterThan(0.1 * up * 0.9);
    }
    expect(Math.abs(sum(rubs))).toBeLessThan(1);
    expect(rubs.reduce((all, { up }) => all + up, 0)).toBeCloseTo(5 * 12.192 * 2.438 * 1000, 0);
  });

  it("is held as if locked where friction is enough", () => {
    const most = Math.max(...locked.map(({ level, up }) => level / up));
    const rubs = held(rubbing(most * 1.1), [floor]);
    rubs.forEach(({ x, y }, n) => {
      expect(x).toBeCloseTo(locked[n]?.x ?? NaN, 3);
      expect(y).toBeCloseTo(locked[n]?.y ?? NaN, 3);
    });
  });

  it("takes a push within friction on all pads together though not on each: what one cannot hold goes to others", () => {
    // 149 kN · 0.3 = 44.6 kN in all against 20 kN
    const rubs = held(rubbing(0.3), [floor, push(20_000)]);
    expect(sum(rubs)).toBeCloseTo(-20_000, 0);
    for (const { level, up } of rubs) expect(level).toBeLessThan(0.3 * up * 1.03 + 20);
  });

  it("is solved as if locked under a push beyond all friction: what slides is told apart, and what locks would take", () => {
    const cases = [floor, push(60_000)];
    const asked = held(rubbing(0.3), cases);
    held(rubbing(10), cases).forEach(({ x }, n) => expect(asked[n]?.x).toBeCloseTo(x, 3));
    expect(sum(asked)).toBeCloseTo(-60_000, 0);
  });

  it("has no friction in an earthquake, nor is any counted at allowable level", () => {
    const shaken = runOf([floor]).combination;
    const quake = { ...shaken, terms: [{ symbol: "Eh", factor: 1 }] } as const;
    for (const more of [{ combination: quake }, { level: "allowable" }] as const)
      held(rubbing(0.1), [floor], { more }).forEach(({ x }, n) => expect(x).toBeCloseTo(locked[n]?.x ?? NaN, 3));
  });
});

it("does not limit what hold-downs hold", () => {
  const locks = (["front-right", "front-left", "door-right", "door-left"] as const).map((fitting): Lock => {
    return { id: `h-${fitting}`, tag: "H", containerId: "u1", fitting, kind: "hold-down" };
  });
  const [one, other] = [0.1, 10].map((friction) => held(rubbing(friction, { locks }), [floor]));
  expect(one).toEqual(other);
});

function missing(): never {
  throw new Error("there is a set that ties, and a run that stands");
}
