import { describe, expect, it } from "vitest";
import type { ElementResult } from "../../src/strength/element-result.ts";
import type { RefusedRun } from "../../src/strength/solve-runs.ts";
import { unitStrength, type UnitFindings } from "../../src/strength/unit-strength.ts";
import { firstSet } from "./one-run.ts";

const result = (change: Partial<ElementResult> = {}): ElementResult => ({
  id: "u1 top side rail left",
  ownerId: "u1",
  element: "top side rail",
  place: "left",
  limitState: "axial force with bending",
  utilisation: 0.8,
  governingRun: "1.4D",
  assumptions: "locks at play",
  held: [],
  envelope: { "locks at play": 0.8, "locks tied": 0.7 },
  covered: "checked",
  ...change,
});
const findings = (results: readonly ElementResult[], change: Partial<UnitFindings> = {}): UnitFindings => ({
  unitId: "u1",
  results,
  holds: [],
  refused: [],
  runs: 100,
  withSteel: false,
  given: [],
  ...change,
});
const kinds = (results: readonly ElementResult[], change: Partial<UnitFindings> = {}) => {
  const { verdict, reasons } = unitStrength(findings(results, change));
  return [verdict, ...reasons.map(({ kind }) => kind)];
};
function refusedRun(node: string): RefusedRun {
  const clause = { document: "", edition: "", place: "", certainty: "derived" } as const;
  return {
    run: {
      id: "0.9D + W",
      level: "strength",
      combination: { id: "6", level: "strength", terms: [], clause },
      factors: {},
    },
    set: firstSet(),
    refusal: { refused: "No equilibrium", moves: { nodes: [node], direction: [0, 0, 1, 0, 0, 0] } },
    held: ["u1"],
  };
}
const over = { utilisation: 1.2, envelope: { "locks at play": 1.2, "locks tied": 1.1 } } as const;

describe("unitStrength", () => {
  it("says works as built, or with steel, only where every part is within its strength and nothing is open", () => {
    expect(kinds([result()])).toEqual(["works as built"]);
    expect(kinds([result()], { withSteel: true })).toEqual(["works with steel"]);
  });

  it("says not checked where no part was", () => {
    expect(kinds([])).toEqual(["not checked"]);
  });

  it("says does not work where a checked part is over 1 under every set of assumptions", () => {
    expect(kinds([result(over)])).toEqual(["does not work", "over"]);
  });

  it("names the assumption where one set says yes and another no", () => {
    const open = { utilisation: 1.2, envelope: { "locks at play": 1.2, "locks tied": 0.9 } } as const;
    const { verdict, reasons } = unitStrength(findings([result(open)]));
    expect(verdict).toBe("needs the engineer");
    expect(reasons).toEqual([
      { kind: "assumption decides", partId: "u1 top side rail left", least: "locks tied", most: "locks at play" },
    ]);
  });

  it("never lets a part fail by runs that do not stand as drawn", () => {
    expect(kinds([result({ ...over, held: ["u1"], envelope: {}, ifHeldDown: 1.2 })])).toEqual([
      "needs the engineer",
      "over if held down",
    ]);
  });

  it("leaves a part beyond a safe bound, or whose strength is refused, to the engineer", () => {
    expect(kinds([result({ ...over, covered: "bounded", upperBound: 0.9 })])).toEqual([
      "needs the engineer",
      "beyond its bound",
    ]);
    const { utilisation: _, ...unstated } = result({ refused: "shape not covered by this check" });
    expect(kinds([unstated])).toEqual(["needs the engineer", "strength refused"]);
  });

  it("leaves to the engineer a limit state that the table of what is judged does not know of its element", () => {
    expect(kinds([result({ limitState: "bearing on soil", covered: "does not arise" })])).toEqual([
      "needs the engineer",
      "not covered",
    ]);
  });

  it("never says works of a part that is neither used nor refused", () => {
    const { utilisation: _, ...unstated } = result();
    expect(() => kinds([unstated])).toThrow(RangeError);
  });

  it("never says works where a run does not stand even with what moves held, whether this unit moves or another", () => {
    const { held: _, ...fallen } = refusedRun("u1:0,0,0");
    const { held: __, ...other } = refusedRun("u10:0,0,0");
    expect(kinds([result()], { refused: [fallen] })).toEqual(["needs the engineer", "moves"]);
    expect(kinds([result()], { refused: [other] })).toEqual(["needs the engineer", "runs without equilibrium"]);
    expect(kinds([result()], { refused: [refusedRun("u10:0,0,0")] })).toEqual(["works as built"]);
  });

  it("does not work where nothing drawn holds what pulls or pushes it, and says what would", () => {
    const hold = { kind: "uplift", ownerId: "u1", places: ["front left"], forceN: 9000, run: "0.9D + W" } as const;
    const { verdict, reasons } = unitStrength(findings([result()], { holds: [hold] }));
    expect(verdict).toBe("does not work");
    expect(reasons).toEqual([{ kind: "hold not drawn", hold }]);
  });
});
