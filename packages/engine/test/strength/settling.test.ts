import { describe, expect, it } from "vitest";
import type { Lock, Scheme } from "@cornerway/schema";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { SOLUTION_ACCURACY } from "../../src/numerics/tolerances.ts";
import { assumptionSets, type AssumptionSet } from "../../src/strength/assumption-sets.ts";
import { modelledBearings, bearingForce } from "../../src/strength/modelled-bearings.ts";
import { solveSettling } from "../../src/strength/settling.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import type { StrengthRun } from "../../src/strength/run-plan.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { firstSet, ownWeight } from "./one-run.ts";

const fittings = ["front-right", "front-left", "door-right", "door-left"] as const;
const scheme: Scheme = inOrder({
  ...drawnUnit({ type: "1CC" }),
  containers: drawnUnit({ type: "1CC" }).containers.map((one) => ({ ...one, doors: "welded shut" })),
  locks: fittings.map((fitting): Lock => ({
    id: `h-${fitting}`,
    tag: "H",
    containerId: "u1",
    fitting,
    kind: "hold-down",
  })),
});
const settled: ActionCase = {
  id: "T",
  symbol: "T",
  loads: [{ kind: "movement", elementId: "p-front-right", downMm: 10 }],
};
const run = (id: string, factors: Readonly<Record<string, number>>): StrengthRun => ({
  id,
  level: "strength",
  combination: {
    id,
    level: "strength",
    terms: [],
    clause: { document: "", edition: "", place: "", certainty: "derived" },
  },
  factors,
});
const solvedIn = (weightN: number, set: AssumptionSet): (readonly (readonly number[])[])[] => {
  const analysis = analyse(scheme);
  const runs = [run("still", { own: 1 }), run("moved", { own: 1, T: 1 })];
  const { solved, built } = solveSettling(analysis, [ownWeight(scheme, weightN), settled], runs, set, strengthMemory());
  expect(solved.map((one) => one.run.id)).toEqual(["still", "moved"]);
  const bearings = modelledBearings(built, analysis.structure.building);
  return solved.map((one) => bearings.map((bearing) => bearingForce(bearing, one)));
};
const forces = (weightN: number): number[][] =>
  solvedIn(weightN, firstSet()).map((run) => run.map(([, , up = 0]) => up));

// Statics of a stiff box on four corners: one bearing lost, the one across the diagonal goes with it, the other two share all.
describe("a box held down at four pads of which one settles by 10 mm", () => {
  const [still = [], moved = []] = forces(40_000);

  it("stands on a quarter each before", () => {
    for (const force of still) expect(force).toBeCloseTo(10_000, 0);
  });

  it("is pulled down nowhere, and keeps its weight", () => {
    // two that just touch, to the accuracy claimed
    expect(Math.min(...moved)).toBeGreaterThan(-SOLUTION_ACCURACY * 40_000);
    expect(moved.reduce((sum, force) => sum + force, 0)).toBeCloseTo(40_000, 3);
    expect(moved.filter((force) => force < 1)).toHaveLength(2);
  });
});

// Upright loads on a determinate hold in plan: no level reactions, whatever twists the box.
describe("the same box with all its holds tied", () => {
  const tied = assumptionSets.find(({ id }) => id === "locks tied") ?? firstSet();
  const [, moved = []] = solvedIn(40_000, tied);

  it("is pushed sideways by no pad when one settles", () => {
    const level = moved.map(([x = 0, y = 0]) => Math.abs(x) + Math.abs(y));
    expect(moved).toHaveLength(4);
    expect(Math.max(...level)).toBeLessThan(1);
  });
});

it("containers that are ready elsewhere are told by what they are, also once they have been made anew", () => {
  const analysis = analyse(scheme);
  const [own, other] = [ownWeight(scheme, 40_000), { ...ownWeight(scheme, 9_000), id: "other" }];
  const set = firstSet();
  const { model } = buildModel(analysis, [own, other], {}, set.assumptions);
  const anew = { ...model, units: model.units.map((unit) => ({ ...unit, fragment: { ...unit.fragment } })) };
  const [kept, made] = [model, anew].map((ready) => {
    const { built } = solveSettling(analysis, [own], [run("still", { own: 1 })], set, strengthMemory(), ready);
    return built.model.units.map(({ loadsKey }) => loadsKey);
  });
  expect(made).toEqual(kept);
  expect(made).toEqual(model.units.map(({ loadsKey }) => loadsKey));
});
