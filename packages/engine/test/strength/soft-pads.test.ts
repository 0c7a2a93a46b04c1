import { describe, expect, it } from "vitest";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { assumptionSets } from "../../src/strength/assumption-sets.ts";
import { bearingForce, modelledBearings } from "../../src/strength/modelled-bearings.ts";
import { solveSettling } from "../../src/strength/settling.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import type { StrengthRun } from "../../src/strength/run-plan.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { ownWeight } from "./one-run.ts";

const analysis = analyse(inOrder(drawnUnit({ type: "1CC" })));
const scheme = inOrder(drawnUnit({ type: "1CC" }));
const run: StrengthRun = {
  id: "one",
  level: "strength",
  combination: {
    id: "one",
    level: "strength",
    terms: [],
    clause: { document: "", edition: "", place: "", certainty: "derived" },
  },
  factors: { own: 1, T: 1 },
};
const lowBy = (downMm: number): ActionCase => {
  return { id: "T", symbol: "T", loads: [{ kind: "movement", elementId: "p-front-right", downMm }] };
};
const setNamed = (id: string) => assumptionSets.find((set) => set.id === id) ?? assumptionSets[0];

function solvedUnder(set: string, downMm: number): { solved: SolvedRun; forces: number[]; downs: number[] } {
  const cases = [ownWeight(scheme, 57_600), lowBy(downMm)];
  const { solved, built } = solveSettling(analysis, cases, [run], setNamed(set), strengthMemory());
  const [one] = solved;
  if (one === undefined) throw new Error("it stands");
  const bearings = modelledBearings(built, analysis.structure.building);
  const downs = bearings.map(({ name }) => -(one.movement[6 * one.nodeIds.indexOf(name) + 2] ?? NaN));
  return { solved: one, forces: bearings.map((bearing) => bearingForce(bearing, one)[2]), downs };
}

// 57.6 kN on four pads of 1.2 m: 14.4 kN each; 0.010 N/mm³ · 1200² = 14 400 N/mm: each goes down by 1.000 mm.
describe("a unit on four pads of soft ground", () => {
  it("goes down by its weight over the ground's stiffness: 1.000 mm", () => {
    const { forces, downs } = solvedUnder("pads soft", 0);
    for (const force of forces) expect(force).toBeCloseTo(14_400, -1);
    for (const down of downs) expect(down).toBeCloseTo(1, 2);
  });

  it("keeps more of its bearing than on rigid pads where one ground is 1 mm low", () => {
    const least = (set: string): number => Math.min(...solvedUnder(set, 1).forces);
    expect(least("pads soft")).toBeGreaterThan(least("locks tied"));
    expect(solvedUnder("pads soft", 1).forces.reduce((sum, force) => sum + force, 0)).toBeCloseTo(57_600, 2);
  });
});
