import type { Lock, Opening, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { ownWeight } from "../strength/one-run.ts";

const fittings = ["front-right", "front-left", "door-right", "door-left"] as const;
const locks = (kind: Lock["kind"], containerId: string, at: readonly (typeof fittings)[number][] = fittings): Lock[] =>
  at.map((fitting) => ({ id: `${containerId}-${fitting}`, tag: "L", containerId, fitting, kind }));

/** Suction on the roof of the topmost unit, kN altogether, on 12.192 × 2.438 m. */
const suction = (unitId: string, kn: number): ActionCase => ({
  id: "suction",
  symbol: "W",
  loads: [
    {
      kind: "on",
      containerId: unitId,
      surface: "roof",
      patch: {
        rect: { u0: 0, u1: 12_192, v0: 0, v1: 2438 },
        pressurePa: (-kn * 1000) / (12.192 * 2.438),
        alongUPaPerMm: 0,
        alongVPaPerMm: 0,
      },
    },
  ],
});

function solvedUnder(scheme: Scheme, actions: readonly ActionCase[]) {
  const combos = { all: Object.fromEntries(actions.map(({ id }) => [id, 1])) };
  const { model } = buildModel(analyse(scheme), actions, combos);
  const answer = solveBuilding(model, condensationCache(1e8)).combos["all"];
  if (answer === undefined) throw new Error("the combination has an answer");
  return answer;
}

// A unit of 40 kN under 60 kN of suction wants to rise with 20 kN, 5 kN at each corner of a doubly symmetric load.
describe("a unit lighter than the suction on its roof", () => {
  const single = drawnUnit({});
  const actions = (scheme: Scheme, unitId: string) => [
    ownWeight(scheme, 40_000),
    suction(unitId, 60 + 40 * (scheme.containers.length - 1)),
  ];

  it("has no equilibrium on pads alone", () => {
    expect(solvedUnder(single, actions(single, "u1"))).toHaveProperty("refused");
  });

  it("pulls 5 kN at each of four hold-downs", () => {
    const scheme = { ...single, locks: locks("hold-down", "u1") };
    const answer = solvedUnder(scheme, actions(scheme, "u1"));
    if ("refused" in answer) throw new Error(answer.refused);
    const pulls = Object.values(answer.frame.reactions).map(([, , z = 0]) => z);
    expect(pulls).toHaveLength(4);
    for (const pull of pulls) expect(pull / -5000).toBeCloseTo(1, 3);
  });

  it("is held by locks to a unit below that is held to its pads, and by neither alone", () => {
    const stack = drawnUnit({ above: 1 });
    const both = [...locks("hold-down", "u1"), ...locks("lock", "u2")];
    const under = (drawn: readonly Lock[]) => {
      const scheme = { ...stack, locks: drawn.toSorted((a, b) => (a.id < b.id ? -1 : 1)) };
      return solvedUnder(scheme, actions(scheme, "u2"));
    };
    expect(under(both)).not.toHaveProperty("refused");
    expect(under(locks("hold-down", "u1"))).toHaveProperty("refused");
    expect(under(locks("lock", "u2"))).toHaveProperty("refused");
  });

  it("is not held by a stock lock where the unit is turned across the one below: apertures cross", () => {
    const stack = drawnUnit({ above: 1 });
    const turned = {
      ...stack,
      containers: stack.containers.map((one, n) => (n === 1 ? { ...one, turnMdeg: 90_000 } : one)),
      locks: [...locks("hold-down", "u1"), ...locks("lock", "u2")].toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    };
    expect(solvedUnder(turned, actions(turned, "u2"))).toHaveProperty("refused");
  });
});

const door = (sillUm: number, change: Partial<Opening> = {}): Scheme => ({
  ...drawnUnit({}),
  openings: [
    {
      id: "d",
      tag: "D",
      containerId: "u1",
      face: "right",
      use: "door",
      offsetUm: 4_000_000,
      sillUm,
      widthUm: 2_000_000,
      heightUm: 2_200_000,
      framed: true,
      ...change,
    },
  ],
});
const linesOf = (scheme: Scheme) => {
  const [unit] = buildModel(analyse(scheme), [], {}).model.units;
  if (unit === undefined) throw new Error("the sample has a unit");
  const kinds = unit.fragment.beams.map(({ id, section }) => `${id.slice(0, id.indexOf("#"))} ${section}`);
  return new Map([...new Set(kinds)].map((kind) => [kind, kinds.filter((one) => one === kind).length]));
};

describe("the frame of an opening", () => {
  it("of a door whose sill lies 5.5 mm above the rail stands on the rail: no sill, as with a sill on the rail itself", () => {
    expect(linesOf(door(180_000))).toEqual(linesOf(door(174_500)));
    expect([...linesOf(door(180_000)).keys()].filter((kind) => kind.startsWith("fold"))).toEqual(["fold fold"]);
  });

  it("of a window 900 mm up has sill and header", () => {
    const [low, high] = [linesOf(door(180_000)), linesOf(door(900_000, { heightUm: 1_200_000 }))];
    const lintels = (lines: Map<string, number>) => lines.get("lintel tube 100x100x6") ?? 0;
    expect(lintels(high)).toBe(2 * lintels(low));
  });

  it("has the sections drawn for it, in the model too", () => {
    const framing = { jamb: "HSS4x4x1/4", header: "HSS6x4x1/4", sill: "HSS3x3x1/4" };
    const lines = linesOf(door(900_000, { heightUm: 1_200_000, use: "window", framing }));
    expect([...lines.keys()].filter((kind) => kind.startsWith("jamb") || kind.startsWith("lintel")).toSorted()).toEqual(
      ["jamb HSS4x4x1/4", "lintel HSS3x3x1/4", "lintel HSS6x4x1/4"],
    );
  });
});
