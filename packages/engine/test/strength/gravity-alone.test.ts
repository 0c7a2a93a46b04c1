import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { checkedParts } from "../../src/strength/checked-parts.ts";
import { andGravityAlone, withGravityAlone } from "../../src/strength/gravity-alone.ts";
import { solveRuns } from "../../src/strength/solve-runs.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import type { StrengthRun } from "../../src/strength/run-plan.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis, firstSet, ownWeight } from "./one-run.ts";

const clause = { document: "", edition: "", place: "", certainty: "derived" } as const;
const run = (id: string, level: StrengthRun["level"], factors: Readonly<Record<string, number>>): StrengthRun => ({
  ...{ id, level, factors },
  combination: {
    ...{ id, level, clause },
    terms: [
      { symbol: "D", factor: 1 },
      { symbol: "W", factor: 0.6 },
    ],
  },
});
const push: ActionCase = {
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "u1", at: { xMm: 0, yMm: 0, zMm: 2896 }, xN: 10_000, yN: 0, zN: 0 }],
};

describe("the gravity loads of a run by themselves", () => {
  const cases = [ownWeight(drawnUnit({}), 1), push];
  const swayed = run("sway", "allowable", { own: 0.6, push: 0.6 });

  it("are a run of their own, without the wind in its sum, once for all that share them", () => {
    const { runs } = withGravityAlone({ cases, runs: [swayed, run("back", "allowable", { own: 0.6, push: -0.6 })] });
    expect(runs.map(({ gravityAlone }) => gravityAlone)).toEqual([
      "D, gravity alone: own",
      "D, gravity alone: own",
      undefined,
    ]);
    expect(runs.at(-1)?.factors).toEqual({ own: 0.6 });
    expect(runs.at(-1)?.combination.terms).toEqual([{ symbol: "D", factor: 1 }]);
  });

  it("are the run that is there already where one has the same factors", () => {
    const { runs } = withGravityAlone({ cases, runs: [run("still", "allowable", { own: 0.6 }), swayed] });
    expect(runs.map(({ id, gravityAlone }) => [id, gravityAlone])).toEqual([
      ["still", undefined],
      ["sway", "still"],
    ]);
  });

  it("are not asked for at strength level, and go with the runs that are chosen", () => {
    const { runs } = withGravityAlone({ cases, runs: [run("s", "strength", { own: 1, push: 1 }), swayed] });
    expect(runs).toHaveLength(3);
    expect(andGravityAlone([runs[1] ?? swayed], runs).map(({ id }) => id)).toEqual(["sway", "D, gravity alone: own"]);
  });
});

/**
 * The model is linear while every bearing is pressed: what 10 kN along the roof adds to a wall hangs on nothing but the 10 kN.
 * A door near the end makes the sheet carry gravity loads too, and more of them where they are greater.
 */
describe("a side wall with a door near its end, by the code's table", () => {
  const door = { face: "right", framed: true, fromMm: 2000, widthMm: 1000 } as const;
  const scheme: Scheme = inOrder(drawnUnit({ openings: [door] }));
  const racked = (weightN: number): { table: number; buckling: number } => {
    const analysis = analyse(scheme);
    const cases = [ownWeight(scheme, weightN), push];
    const { runs } = withGravityAlone({ cases, runs: [run("sway", "allowable", { own: 1, push: 1 })] });
    const pressed = run("pressed", "strength", { own: 1, push: 1 });
    const set = solveRuns(analysis, cases, [...runs, pressed], firstSet(), strengthMemory());
    const parts = checkedParts(analysis, set.built, scheme, basis);
    const most = (place: RegExp, id: string): number => {
      const solved = set.solved.find((one) => one.run.id === id);
      if (solved === undefined) throw new Error(`no equilibrium: ${set.refused[0]?.refusal.refused}`);
      return Math.max(...parts.filter((part) => place.test(part.place)).map((part) => part.use(solved)));
    };
    return { table: most(/^right wall$/, "sway"), buckling: most(/^right \d/, "pressed") };
  };
  const [light, heavy] = [racked(200_000), racked(400_000)];

  it("is racked by level loads alone, whatever it carries", () => {
    expect(light.table).toBeGreaterThan(0.1);
    expect(heavy.table / light.table).toBeCloseTo(1, 6);
  });

  it("buckles under both together", () => {
    expect(heavy.buckling).toBeGreaterThan(1.2 * light.buckling);
  });
});
