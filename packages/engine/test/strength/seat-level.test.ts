import { describe, expect, it } from "vitest";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { modelledBearings } from "../../src/strength/modelled-bearings.ts";
import { movementOf } from "../../src/strength/movements.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { schemeActions } from "../../src/strength/scheme-actions.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { basis, oneRun, ownWeight } from "./one-run.ts";

// A 20 ft high cube pushed 1.5 m along the one below. Its front fittings come down on seats on the top rails, its bottom rails on
// seats on the door fittings below. Half hole spacings 5853/2 and 2259/2 (ISO 668, from memory); gaps of 6 and 12.5 mm to pack.
const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const upper = { id: "t", type: "1CCC" as const, x: 1500, y: 0, z: 2896 };
// Plates of 60 mm lap the rails, 60 wide on the outside, and the fittings over or under them.
const seats = [-1, 1].flatMap((side) => [
  { id: `front${side + 2}`, upper: "t", lower: "g", x: 1500 - 5853 / 2, y: side * 1170, packing: 6 },
  { id: `rear${side + 2}`, upper: "t", lower: "g", x: 5853 / 2, y: side * 1170, packing: 12.5 },
]);
const scheme = schemeOf({ units: [lower, upper], seats, pads: padsUnder(lower) });
const weight = ownWeight(scheme, 60_000);

const low = (ids: readonly string[], downMm: number): ActionCase => ({
  id: "T",
  symbol: "T",
  loads: ids.map((elementId) => ({ kind: "movement", elementId, downMm })),
});

/** Upwards on the upper unit at each of its bearings, by place, and the movement of its front right foot. */
function standing(actions: readonly ActionCase[]) {
  const { solved, set } = oneRun(scheme, actions);
  const { building } = analyse(inOrder(scheme)).structure;
  const own = modelledBearings(set.built, building).filter(({ ownerId }) => ownerId === "t");
  const up = own.map(({ name, place }) => [place, solved.bearing(name)[2]] as const);
  const headOfFront = "t:-2926.5,-1129.5,2896.0";
  return { up, head: movementOf(headOfFront, solved)[2], residual: solved.residual };
}

describe("the level of seats", () => {
  const drawn = standing([weight]);

  it("is one action for each seat, high and low by the project's error", () => {
    const actions = schemeActions(scheme, analyse(inOrder(scheme)), basis);
    if (!actions.accepted) throw new Error("gravity alone has no hazards to refuse");
    const named = actions.movements.filter(({ id }) => id.includes("front") || id.includes("rear")).map(({ id }) => id);
    expect(named).toEqual(["front1", "front3", "rear1", "rear3"].flatMap((id) => [`T ${id} low`, `T ${id} high`]));
  });

  it("tilts the unit and moves no load where both seats of one end are low", () => {
    const { up, head } = standing([weight, low(["front1", "front3"], 5)]);
    up.forEach(([, force], n) => expect(force).toBeCloseTo(drawn.up[n]?.[1] ?? NaN, -1));
    // 5 mm at its front end, all of it
    expect(head - drawn.head).toBeCloseTo(-5, 1);
  });

  it("takes from one diagonal what it gives to the other where one seat is low: four bearings balance the same weight", () => {
    const { up, residual } = standing([weight, low(["front1"], 1)]);
    const change = new Map(up.map(([place, force], n) => [place, force - (drawn.up[n]?.[1] ?? NaN)]));
    const [front, rear] = ["front", "bottom rail"].map((start) =>
      ["right", "left"].map((side) => {
        const place = [...change.keys()].find((one) => one.startsWith(start) && one.includes(side));
        return change.get(place ?? "") ?? NaN;
      }),
    );
    const [fr = NaN, fl = NaN] = front ?? [];
    const [rr = NaN, rl = NaN] = rear ?? [];
    expect(fr).toBeLessThan(-100);
    for (const [one, other] of [
      [fl, -fr],
      [rr, -fr],
      [rl, fr],
    ] as const)
      expect(one / other).toBeCloseTo(1, 3);
    expect(residual).toBeLessThan(1e-6);
  });

  it("is the same up and down for a small error: high is low turned round", () => {
    const [lowered, raised] = [standing([weight, low(["rear3"], 1)]), standing([weight, low(["rear3"], -1)])];
    lowered.up.forEach(([, force], n) => {
      const before = drawn.up[n]?.[1] ?? NaN;
      expect(force - before).toBeCloseTo(before - (raised.up[n]?.[1] ?? NaN), 0);
    });
  });
});

describe("the plate of a seat", () => {
  it("is pressed over its length and no more than the bottom rail's flange of 30 mm: 0.75 · 1.8 · 235 · 150 · 30 (J7)", () => {
    const { worsts } = oneRun(scheme, [weight]);
    const plates = worsts.filter(({ part }) => part.element === "seat");
    expect(plates).toHaveLength(4);
    for (const plate of plates) {
      const { use, screened } = governingOf(plate);
      expect(use).toBeCloseTo((screened.forceN ?? NaN) / (0.75 * 1.8 * 235 * 150 * 30), 6);
    }
  });
});
