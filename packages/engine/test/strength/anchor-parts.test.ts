import { describe, expect, it } from "vitest";
import type { Lock, Scheme } from "@cornerway/schema";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { assumptionSets, type AssumptionSet } from "../../src/strength/assumption-sets.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { steels } from "../../src/catalog/materials.ts";
import { holes, padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { oneRun, ownWeight } from "./one-run.ts";

const fittings = ["front-right", "front-left", "door-right", "door-left"] as const;
const held: Scheme = {
  ...drawnUnit({ type: "1CC" }),
  locks: fittings.map((fitting): Lock => ({
    id: `h-${fitting}`,
    tag: "H",
    containerId: "u1",
    fitting,
    kind: "hold-down",
  })),
};
/** Up on the whole roof, N. */
const lift = (forceN: number): ActionCase => ({
  id: "lift",
  symbol: "W",
  loads: [
    {
      kind: "against",
      containerId: "u1",
      face: "roof",
      patch: {
        rect: { u0: 0, u1: 6058, v0: 0, v1: 2438 },
        pressurePa: -forceN / (6.058 * 2.438),
        alongUPaPerMm: 0,
        alongVPaPerMm: 0,
      },
    },
  ],
});
/** Along the unit, at its roof, N. */
const pushed = (forceN: number): ActionCase => ({
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN: forceN, yN: 0, zN: 0 }],
});
const checksOf = (scheme: Scheme, forceN: number, place: string) => {
  const worst = oneRun(scheme, [ownWeight(scheme, 20_000), lift(forceN)]).worsts.find(
    (one) => one.part.place === place,
  );
  return worst === undefined ? [] : governingOf(worst).screened.checks();
};

// 20 kN of weight under 60 kN of suction: 10 kN at each hold-down. Pad 1.2 · 1.2 · 0.4 m · 23.5 kN/m³ = 13.54 kN, 0.9 of it 12.18.
describe("a unit held down on four pads and lifted by 40 kN more than its weight", () => {
  it("lifts each pad with 10 kN against 0.9 of its weight", () => {
    const [check] = checksOf(held, 60_000, "its own weight");
    expect(check?.ok === true && check.utilisation).toBeCloseTo(10_000 / 12_182.4, 3);
  });

  // Steel 0.75 · 4 · 157 · 400 = 188.4 kN; breakout of four, c_a 500, h_ef 150: N_b = 10·√17.2·150^1.5 = 76.2 kN, area
  // (450 + 200)² / 450² = 2.086, 0.70: 111.3 kN cracked concrete: 10 kN is 0.090 of it.
  it("breaks no cone out of it: 10 kN of 111 kN", () => {
    const checks = checksOf(held, 60_000, "anchors of the stated detail");
    const most = Math.max(...checks.map((check) => (check.ok ? check.utilisation : Infinity)));
    expect(Math.abs(most / (10_000 / 111_300) - 1)).toBeLessThan(0.03);
  });

  it("is not asked for where nothing is held down", () => {
    expect(checksOf(drawnUnit({ type: "1CC" }), 10_000, "its own weight")).toEqual([]);
  });
});

// Two 20 ft units end to end, 300 mm apart; one pad of 2.0 × 1.2 m under both corners of a side. Each is pushed with 30 kN away
// from the other, so that the pad takes 2 × 7.5 kN that cancel: in anchors of their own they do not.
describe("hold-downs of two units on one pad", () => {
  const two = sharingPads();
  const away = (forceN: number, id: string, xMm: number): ActionCase["loads"][number] => ({
    ...{ kind: "point", elementId: id, at: { xMm, yMm: 0, zMm: 150 } },
    ...{ xN: forceN, yN: 0, zN: 0 },
  });
  const shearsOn = (forces: readonly [number, number]): number => {
    const push: ActionCase = {
      id: "push",
      symbol: "W",
      loads: [away(forces[0], "u1", 0), away(forces[1], "u2", 6358)],
    };
    const worst = oneRun(two, [ownWeight(two, 20_000), push]).worsts.find(
      ({ part }) => part.place === "anchors of the stated detail" && part.ownerId.startsWith("shared"),
    );
    return worst === undefined ? NaN : governingOf(worst).use;
  };

  it("are pushed apart as hard as they are pushed together one way", () => {
    const [apart, oneWay] = [shearsOn([-30_000, 30_000]), shearsOn([30_000, 30_000])];
    expect(apart).toBeGreaterThan(0.9 * oneWay);
  });
});

// Two posts under one end of a 20 ft unit.
describe("a post by itself on a pad", () => {
  const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
  const far = 1.5 * holes["1CCC"].s;
  const sides = [-1, 1].map((side) => (side * holes["1CCC"].p) / 2);
  const scheme = schemeOf({
    units: [lower, { id: "t", type: "1CCC", x: holes["1CCC"].s, y: 0, z: 2896 }],
    posts: sides.map((y, n) => ({ id: `p${n}`, x: far, y, foot: 0, head: 2896 })),
    pads: [...padsUnder(lower), ...sides.map((y, n) => ({ id: `b${n}`, x: far, y, length: 900, width: 900 }))],
  });
  const { worsts } = oneRun(scheme, [ownWeight(scheme, 60_000)]);

  it("has a cap plate that bends as its base plate does: 0.9 F_y t² B N/2 l², l 52.5 mm beyond 0.95 of the tube", () => {
    const found = worsts.find(({ part }) => part.ownerId === "p1" && part.place.startsWith("head of"));
    if (found === undefined) throw new Error("its cap plate is checked");
    const { screened } = governingOf(found);
    const out = (101.6 + 100 - 0.95 * 101.6) / 2;
    const side = 101.6 + 100;
    const can = (0.9 * steels.plate.fyMpa * 20 * 20 * side * side) / (2 * out * out);
    const [check] = screened.checks();
    expect(check?.ok === true && check.utilisation).toBeCloseTo((screened.forceN ?? NaN) / can, 6);
    expect(screened.forceN).toBeGreaterThan(5000);
  });
});

/** Nothing is locked: tied, every bearing holds sideways, the feet of posts in walls among them. */
describe("a post in a wall, on a pad of its own", () => {
  const scheme = drawnUnit({
    openings: [{ face: "right", framed: false, use: "open-wall", fromMm: 200, widthMm: 11_792 }],
    posts: [4000, 8000],
  });
  const anchored = (forceN: number, set?: AssumptionSet) =>
    oneRun(scheme, [ownWeight(scheme, 200_000), pushed(forceN)], set && { set }).worsts.filter(({ part }) =>
      part.place.startsWith("anchors of the stated detail under"),
    );
  const tied = assumptionSets.find(({ id }) => id === "locks tied");

  it("has anchors that take what it holds sideways, and pulls none of them", () => {
    const found = anchored(20_000, tied);
    expect(found).toHaveLength(2);
    for (const worst of found) {
      const { use, screened } = governingOf(worst);
      expect(use).toBeGreaterThan(0);
      const titles = screened.checks().map((check) => (check.ok ? check.working.title : ""));
      expect(titles.filter((title) => /tension|pull/i.test(title))).toEqual([]);
    }
  });

  it("holds nothing sideways where locks play: the corners do", () => {
    for (const worst of anchored(20_000)) expect(governingOf(worst).use).toBe(0);
  });
});

function sharingPads(): Scheme {
  const one = drawnUnit({ type: "1CC" });
  const [unit] = one.containers;
  if (unit === undefined) throw new Error("a unit is drawn");
  const apartUm = 6_358_000;
  const atEnd = (end: string) => one.pads.filter(({ id }) => id.startsWith(`p-${end}`));
  const containers = [unit, { ...unit, id: "u2", tag: "U2", xUm: apartUm }];
  return {
    ...one,
    containers,
    pads: [
      ...atEnd("front"),
      ...atEnd("door").map((pad) => ({ ...pad, id: `shared-${pad.id}`, xUm: apartUm / 2, lengthUm: 2_000_000 })),
      ...atEnd("door").map((pad) => ({ ...pad, id: `far-${pad.id}`, xUm: apartUm + pad.xUm })),
    ],
    loads: [],
    locks: containers.flatMap(({ id }) =>
      fittings.map((fitting): Lock => ({
        id: `h-${id}-${fitting}`,
        tag: "H",
        containerId: id,
        fitting,
        kind: "hold-down",
      })),
    ),
  };
}
