import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { steels } from "../../src/catalog/materials.ts";
import { statedTieChecks, statedTieUse } from "../../src/checks/stated-tie.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { modelledBearings } from "../../src/strength/modelled-bearings.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { movementOf } from "../../src/strength/movements.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { basis, oneRun, ownWeight } from "./one-run.ts";

// Two 20 ft high cubes side by side, 100 mm apart; half the hole spacings 5853/2 and 2259/2, height 2896: ISO 668, from memory.
const [a, b] = [
  { id: "a", type: "1CCC" as const, x: 0, y: 0 },
  { id: "b", type: "1CCC" as const, x: 0, y: 2538 },
];
const inGap = 2438 / 2 + 50;
const atTops = (upright: boolean) =>
  [-1, 1].map((end) => ({
    id: `t${end + 2}`,
    a: "a",
    b: "b",
    at: [end * 2926.5, inGap, 2896 - 59] as const,
    upright,
  }));
const scheme = (upright: boolean): Scheme =>
  schemeOf({ units: [a, b], ties: atTops(upright), pads: [...padsUnder(a), ...padsUnder(b)] });

const pushed: ActionCase = {
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "a", at: { xMm: 0, yMm: 1129.5, zMm: 2856 }, xN: 0, yN: 5000, zN: 0 }],
};
const laden: ActionCase = {
  id: "laden",
  symbol: "L",
  loads: [{ kind: "own weight", containerId: "a", weightN: 40_000 }],
};

/** What the ground gives to one unit, N, and what its ties give it, from how far their ends are apart. */
function bodyOf(unitId: string, upright: boolean, actions: readonly ActionCase[]) {
  const drawn = scheme(upright);
  const { solved, set, worsts } = oneRun(drawn, actions);
  const { building } = analyse(inOrder(drawn)).structure;
  const own = modelledBearings(set.built, building).filter(({ ownerId }) => ownerId === unitId);
  const ground = sum(own.map(({ name }) => solved.bearing(name)));
  const sign = unitId === "a" ? 1 : -1;
  const ties = sum(
    set.built.model.springs.map(({ i, j = "", k }) => {
      const [from, to] = [movementOf(i, solved), movementOf(j, solved)];
      return [0, 1, 2].map((c) => sign * (k[c] ?? 0) * ((to[c] ?? 0) - (from[c] ?? 0)));
    }),
  );
  return { ground, ties, worsts };
}

const sum = (forces: readonly (readonly number[])[]): number[] =>
  [0, 1, 2].map((c) => forces.reduce((total, force) => total + (force[c] ?? 0), 0));

describe("ties between two units side by side", () => {
  const weight = ownWeight(scheme(false), 50_000);

  it("are part of the model: nothing is left out for them", () => {
    expect(oneRun(scheme(true), [weight]).set.built.notes).toEqual([]);
  });

  it("are as stiff as the stated plate: E A/L across the gap, 12 E I/L³ and (5/6) G A/L in a row along it", () => {
    // 200 000 · 1500/300 = 10⁶; 12 · 200 000 · 2 812 500/300³ = 250 000, (5/6) · 76 923 · 1500/300 = 320 513: together 140 449
    const [spring] = oneRun(scheme(true), [weight]).set.built.model.springs;
    expect(spring?.k.map((value) => Math.round(value))).toEqual([140_449, 1_000_000, 140_449, 0, 0, 0]);
  });

  it("balance either unit with the ground and the loads on it", () => {
    for (const upright of [false, true]) {
      const { ground, ties } = bodyOf("a", upright, [weight, pushed, laden]);
      expect((ground[1] ?? 0) + (ties[1] ?? 0)).toBeCloseTo(-5000, 1);
      expect((ground[2] ?? 0) + (ties[2] ?? 0)).toBeCloseTo(90_000, 1);
    }
  });

  it("hand on half a push to the neighbour, two equal units held together", () => {
    const { ties } = bodyOf("b", false, [weight, pushed]);
    expect(ties[1]).toBeGreaterThan(0.45 * 5000);
    expect(ties[1]).toBeLessThan(0.5 * 5000);
  });

  it("leave each unit to settle by itself in plan, and share a load upright where they carry it", () => {
    expect(bodyOf("a", false, [weight, laden]).ties[2]).toBe(0);
    const { ties } = bodyOf("a", true, [weight, laden]);
    expect(ties[2]).toBeGreaterThan(1000);
  });

  it("are checked as the stated plate under what they carry", () => {
    const { worsts, ties } = bodyOf("b", false, [weight, pushed]);
    const parts = worsts.filter(({ part }) => part.element === "tie");
    expect(parts.map(({ part }) => part.ownerId)).toEqual(["t1", "t3"]);
    // the sheeted front end hands on more than the doors; together no less than the whole, which is pressed from a to b
    const uses = parts.map((part) => governingOf(part).use);
    const alone = statedTieUse(basis.factored)({ acrossN: ties[1] ?? 0, levelN: 0, uprightN: 0 });
    expect(sum(uses.map((use) => [use]))[0]).toBeGreaterThanOrEqual(alone);
    expect(uses.every((use) => use > 0.2 * alone)).toBe(true);
  });
});

/**
 * The stated plate by hand: 150 × 10 of A36, 300 between its welds of 2 × 150 with 5 mm legs on a rail of 3 mm at F_u 360.
 * AISC 360-16, AISI S100, LRFD; clauses from memory.
 */
describe("the stated plate of a tie", () => {
  const checks = (force: { acrossN?: number; levelN?: number; uprightN?: number }) =>
    statedTieChecks({ acrossN: 0, levelN: 0, uprightN: 0, ...force }, basis.factored);
  const useOf = (force: Parameters<typeof checks>[0], limitState: string) =>
    Math.max(...checks(force).map((check) => (check.limitState === limitState && check.ok ? check.utilisation : 0)));
  const { fyMpa } = steels.plate;

  it("yields in tension: 0.9 F_y A_g (J4.1)", () => {
    expect(useOf({ acrossN: -100_000 }, "tension")).toBeCloseTo(100_000 / (0.9 * fyMpa * 1500), 6);
  });

  it("buckles pressed over the gap (J4.4): slenderness 300/(10/√12) = 103.9, F_e 182.8, F_cr 140.7 MPa", () => {
    const fe = (Math.PI * Math.PI * 200_000) / (103.923 * 103.923);
    const fcr = 0.658 ** (fyMpa / fe) * fyMpa;
    expect(useOf({ acrossN: 100_000 }, "compression")).toBeCloseTo(100_000 / (0.9 * fcr * 1500), 4);
  });

  it("bends in its own plane along the gap (F11): L_b d/t² 450, M_n = 1.367 M_y, V acts 150 mm off", () => {
    const my = (fyMpa * 10 * 150 * 150) / 6;
    const mn = (1.52 - (0.274 * 450 * fyMpa) / 200_000) * my;
    expect(useOf({ levelN: 20_000 }, "plate bending")).toBeCloseTo((20_000 * 150) / (0.9 * mn), 6);
  });

  it("tears its welds (S100 J2.5): pulled 0.5·0.75 t L F_u; along the gap 2.91 times as much of it, I_p 2.25·10⁶ mm³", () => {
    const strength = 0.5 * 0.75 * 3 * 300 * 360;
    expect(useOf({ acrossN: -30_000 }, "weld")).toBeCloseTo(30_000 / strength, 6);
    // q_x = 150·75/2.25e6 = 0.005, q_y = 1/300 + 0.005 a newton: 300·√(0.005² + 0.00833²) = 2.915
    expect(useOf({ levelN: 10_000 }, "weld")).toBeCloseTo((2.9155 * 10_000) / strength, 4);
  });

  it("is screened by the same number its workings give", () => {
    const use = statedTieUse(basis.factored);
    for (const force of [
      { acrossN: 12_000, levelN: 3000, uprightN: 500 },
      { acrossN: -9000, levelN: 100, uprightN: 4000 },
    ]) {
      const worst = Math.max(...checks(force).map((check) => (check.ok ? check.utilisation : Infinity)));
      expect(use(force)).toBeCloseTo(worst, 9);
    }
  });
});
