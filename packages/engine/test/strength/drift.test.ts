import { describe, expect, it } from "vitest";
import { defaultBasis, type Scheme } from "@cornerway/schema";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { buildingFrame } from "../../src/loads/building-frame.ts";
import { driftBasis, driftParts } from "../../src/strength/drift-parts.ts";
import { gapParts } from "../../src/strength/gap-parts.ts";
import { modelledBearings } from "../../src/strength/modelled-bearings.ts";
import { leanOf, planMovement } from "../../src/strength/movements.ts";
import { unitCorners } from "../../src/strength/unit-corners.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import type { StrengthPart } from "../../src/strength/strength-part.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis, oneRun, ownWeight } from "./one-run.ts";

const hazards = sampleHazards({ wind: { mph: 105 }, seismic: { ss: 0.15, s1: 0.06 } });
const unit: Scheme = { ...drawnUnit({}), basis: { ...defaultBasis, hazards } };
const pair: Scheme = {
  ...unit,
  containers: unit.containers.flatMap((one) => [one, { ...one, id: "u2", tag: "U2", yUm: 2_488_000 }]),
  pads: unit.pads.flatMap((pad) => [pad, { ...pad, id: `${pad.id}-2`, yUm: pad.yUm + 2_488_000 }]),
};

/** 10 kN at the middle of the roof of each named unit, along site y. */
const push = (forces: Readonly<Record<string, number>>): ActionCase => ({
  id: "push",
  symbol: "Eh",
  loads: Object.entries(forces).map(([elementId, yN]) => {
    return {
      kind: "point",
      elementId,
      at: { xMm: 0, yMm: elementId === "u2" ? 2488 : 0, zMm: 2896 },
      xN: 0,
      yN,
      zN: 0,
    };
  }),
});

/** A solved run as one of earthquakes, or of wind, at either level. */
const under = (solved: SolvedRun, symbol: "Eh" | "W" | "D"): SolvedRun => ({
  ...solved,
  ...{ run: { ...solved.run, combination: { ...solved.run.combination, terms: [{ symbol, factor: 1 }] } } },
});

function pushed(scheme: Scheme, forces: Readonly<Record<string, number>>) {
  const { set, solved } = oneRun(scheme, [ownWeight(scheme, 200_000), push(forces)]);
  const building = buildingFrame(scheme);
  const drift = building && driftBasis(scheme, building, basis.loads);
  if (building === undefined || drift === undefined) throw new Error("the sample has hazards");
  return { set, solved, building, drift, units: set.built.model.units };
}

const partNamed = (parts: readonly StrengthPart[], name: string): StrengthPart => {
  const part = parts.find(({ place }) => place === name);
  if (part === undefined) throw new Error(`no part ${name}`);
  return part;
};

describe("drift of a 40 ft unit pushed with 10 kN across", () => {
  const { set, solved, drift, units } = pushed(unit, { u1: 10_000 });
  const [placed] = units;
  if (placed === undefined) throw new Error("the unit is there");
  const own = modelledBearings(set.built, analyse(unit).structure.building);
  const parts = driftParts(placed, own, drift);
  const leans = unitCorners(placed).map((corner) => Math.hypot(...leanOf(corner, solved)));
  const elastic = Math.max(...leans);

  it("is largest at the open door end, as the blind end holds it", () => {
    const [front, , door] = unitCorners(placed).map((corner) => leanOf(corner, solved)[1]);
    expect(door).toBeGreaterThan(10 * (front ?? NaN));
  });

  it("in an earthquake is C_d 2 times the elastic lean over 0.02 of the height, ASCE 7 12.8.6 and table 12.12-1 by hand", () => {
    const part = partNamed(parts, "drift in an earthquake");
    const [check] = part.decide(under(solved, "Eh")).checks();
    expect(check?.ok === true && check.utilisation).toBeCloseTo((2 * elastic) / (0.02 * 2896), 9);
  });

  it("comes with the stability coefficient P·δ/(V·h) against 0.25, by hand with 200 kN on it and 10 kN across", () => {
    const part = partNamed(parts, "drift in an earthquake");
    const [, check] = part.decide(under(solved, "Eh")).checks();
    expect(check?.ok === true && check.utilisation).toBeCloseTo((200_000 * elastic) / (10_000 * 2896) / 0.25, 5);
  });

  it("in wind is the lean over a 400th of the height, 0.7 of the 50-year wind standing for 0.6 of the mapped one", () => {
    const part = partNamed(parts, "drift in wind");
    const use = (((elastic * 0.7) / (1.6 * 0.6)) * 400) / 2896;
    expect(part.use(under(solved, "W"))).toBeCloseTo(use, 9);
    const [check] = part.decide(under(solved, "W")).checks();
    expect(check?.ok === true && check.utilisation).toBeCloseTo(use, 9);
  });

  it("is none where neither wind nor earthquake act", () => {
    for (const part of parts) expect(part.use(under(solved, "D"))).toBe(0);
  });
});

describe("a gap of 50 mm between two units pushed towards each other", () => {
  const { solved, building, drift, units } = pushed(pair, { u1: 10_000, u2: -10_000 });
  const [part, ...more] = gapParts(building, units, drift);
  const most = (id: string, way: number): number => {
    const placed = units.find((one) => one.id === id);
    if (placed === undefined) throw new Error(`no unit ${id}`);
    return Math.max(...unitCorners(placed).map(({ head }) => way * planMovement(head, solved)[1]));
  };

  it("is one gap, closed by both heads, in an earthquake by C_d times as much", () => {
    expect(more).toEqual([]);
    const closed = most("u1", 1) + most("u2", -1);
    expect(closed).toBeGreaterThan(0);
    expect(part?.place).toBe("gap of 50 mm to u2");
    expect(part?.use(under(solved, "W"))).toBeCloseTo(closed / 50, 9);
    expect(part?.use(under(solved, "Eh"))).toBeCloseTo((2 * closed) / 50, 9);
  });
});
