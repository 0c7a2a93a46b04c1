import { describe, expect, it } from "vitest";
import type { FrameRefusal, FrameSolution } from "../../src/analysis/frame-result.ts";
import { solveFrame } from "../../src/frame.ts";
import { referenceJson, referenceModel } from "./reference-model.ts";
import { solved } from "./line-model.ts";

const KINDS = ["displacements", "reactions", "memberEndForces", "panelFlows", "links"] as const;
type Values = Readonly<Record<string, number | readonly number[]>>;

/** Largest difference over the largest value of the kind; translations and rotations, forces and moments apart. */
function apart(ours: Values, theirs: Values, group: (c: number) => number): number[] {
  const worst = [0, 0];
  const largest = [0, 0];
  for (const [id, value] of Object.entries(theirs)) {
    const own = [ours[id] ?? NaN].flat();
    [value].flat().forEach((expected, c) => {
      const g = group(c);
      largest[g] = Math.max(largest[g] ?? 0, Math.abs(expected));
      worst[g] = Math.max(worst[g] ?? 0, Math.abs(expected - (own[c] ?? NaN)));
    });
  }
  return worst.map((value, g) => (value === 0 ? 0 : value / (largest[g] ?? 0)));
}

// Source: the answers of an independent frame solver, given with the models (shared/reference). Asked: 0.1 % of the
// largest value of its kind. Reached: 1e-8, which is asked here so that a loss is seen.
describe.each(["D01", "D02", "D03", "D04", "D05", "D06", "D07"])("reference building %s", (name) => {
  const expected = referenceJson<{ combos: Record<string, FrameSolution> }>(`models/${name}.expected.json`).combos;
  const rows = Object.entries(expected).map(
    ([combo, theirs]) => [combo, theirs, solved(referenceModel(name), combo)] as const,
  );

  it.each(rows)(
    "combination %s agrees with the independent solver to 1e-8 of the largest of each kind",
    (_, theirs, ours) => {
      for (const kind of KINDS) {
        const split = kind === "panelFlows" ? () => 0 : (c: number) => (c % 6 < 3 ? 0 : 1);
        const [first = NaN, second = NaN] = apart(ours[kind], theirs[kind], split);
        expect(first, kind).toBeLessThan(1e-8);
        // rotations are printed there with nine decimals, against a largest of about 0.001
        expect(second, `${kind}, turning`).toBeLessThan(kind === "displacements" ? 1e-5 : 1e-8);
      }
    },
  );

  it.each(rows)("combination %s opens the same supports and links", (_, theirs, ours) => {
    expect(ours.open.supports.toSorted()).toEqual(theirs.open.supports.toSorted());
    expect(ours.open.links.toSorted()).toEqual(theirs.open.links.toSorted());
  });

  it.each(rows)(
    "combination %s is in equilibrium: forces to 1e-9 of the load, moments to 1e-9 of load times size",
    (_, __, ours) => {
      const load = Math.max(...Object.values(ours.reactions).flat().map(Math.abs));
      expect(Math.max(...ours.equilibrium.slice(0, 3).map(Math.abs))).toBeLessThan(1e-9 * load);
      expect(Math.max(...ours.equilibrium.slice(3).map(Math.abs))).toBeLessThan(1e-9 * load * 12_000);
      expect(ours.residual).toBeLessThan(1e-8);
    },
  );
});

describe("reference building D07 in rising wind", () => {
  // By hand (published-values and D07 notes): the unit turns over about its far side just above 1.05 kN/m².
  const model = referenceModel("D07");
  const at = (factor: number) => ({ ...model, combos: { wind: { D: 1, W: factor } } });

  function refused(factor: number): FrameRefusal {
    const result = solveFrame(at(factor)).combos["wind"];
    if (result === undefined || !("refused" in result)) throw new Error("not refused");
    return result;
  }

  it("stands at 1.05 times W and is refused at 1.051 times W", () => {
    expect(solveFrame(at(1.05)).combos["wind"]).not.toHaveProperty("refused");
    expect(refused(1.051).refused).toContain("No equilibrium");
  });

  it("a refusal names all nodes of the unit but those it turns about, moving north and up, and gives no numbers", () => {
    const refusal = refused(2);
    const { nodes, direction } = refusal.moves;
    expect(Object.keys(refusal).sort()).toEqual(["moves", "refused"]);
    expect(nodes.length).toBeGreaterThan(90);
    expect(nodes).not.toContain("A:0.0,2259.0,0.0");
    expect(direction[1]).toBeGreaterThan(0);
    expect(direction[2]).toBeGreaterThan(0);
    expect(direction[3]).toBeLessThan(0);
  });
});
