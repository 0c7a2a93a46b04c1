import { describe, expect, it } from "vitest";
import { solveFrame } from "../../src/frame.ts";
import { referenceJson, referenceModel } from "./reference-model.ts";

const KINDS = ["displacements", "reactions", "memberEndForces", "panelFlows", "links"] as const;

/** Largest difference over the largest value of the kind; translations and rotations, forces and moments apart. */
function apart(
  ours: Record<string, number | number[]>,
  theirs: Record<string, number | number[]>,
  group: (c: number) => number,
) {
  const worst = [0, 0];
  const largest = [0, 0];
  for (const [id, value] of Object.entries(theirs)) {
    const own = [ours[id]].flat();
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
  const expected = referenceJson(`models/${name}.expected.json`).combos;
  const combos = solveFrame(referenceModel(name)).combos as any;

  it.each(Object.keys(expected))(
    "combination %s agrees with the independent solver to 1e-8 of the largest of each kind",
    (combo) => {
      for (const kind of KINDS) {
        const split = kind === "panelFlows" ? () => 0 : (c: number) => (c % 6 < 3 ? 0 : 1);
        const [first = NaN, second = NaN] = apart(combos[combo][kind], expected[combo][kind], split);
        expect(first, kind).toBeLessThan(1e-8);
        // rotations are printed there with nine decimals, against a largest of about 0.001
        expect(second, `${kind}, turning`).toBeLessThan(kind === "displacements" ? 1e-5 : 1e-8);
      }
    },
  );

  it.each(Object.keys(expected))("combination %s opens the same supports and links", (combo) => {
    expect([...combos[combo].open.supports].sort()).toEqual([...expected[combo].open.supports].sort());
    expect([...combos[combo].open.links].sort()).toEqual([...expected[combo].open.links].sort());
  });

  it.each(Object.keys(expected))(
    "combination %s is in equilibrium: forces to 1e-9 of the load, moments to 1e-9 of load times size",
    (combo) => {
      const reactions: number[][] = Object.values(combos[combo].reactions);
      const load = Math.max(...reactions.flat().map(Math.abs));
      const [fx, fy, fz, mx, my, mz] = combos[combo].equilibrium.map(Math.abs);
      expect(Math.max(fx, fy, fz)).toBeLessThan(1e-9 * load);
      expect(Math.max(mx, my, mz)).toBeLessThan(1e-9 * load * 12_000);
      expect(combos[combo].residual).toBeLessThan(1e-8);
    },
  );
});

describe("reference building D07 in rising wind", () => {
  // By hand (published-values and D07 notes): the unit turns over about its far side just above 1.05 kN/m².
  const model = referenceModel("D07");
  const at = (factor: number) => ({ ...model, combos: { wind: { D: 1, W: factor } } });

  it("stands at 1.05 times W and is refused at 1.051 times W", () => {
    expect(solveFrame(at(1.05)).combos["wind"]).not.toHaveProperty("refused");
    expect(solveFrame(at(1.051)).combos["wind"]).toHaveProperty("refused");
  });

  it("a refusal names all nodes of the unit but those it turns about, moving north and up, and gives no numbers", () => {
    const refused = solveFrame(at(2)).combos["wind"] as any;
    expect(Object.keys(refused).sort()).toEqual(["moves", "refused"]);
    expect(refused.moves.nodes.length).toBeGreaterThan(90);
    expect(refused.moves.nodes).not.toContain("A:0.0,2259.0,0.0");
    expect(refused.moves.direction[1]).toBeGreaterThan(0);
    expect(refused.moves.direction[2]).toBeGreaterThan(0);
    expect(refused.moves.direction[3]).toBeLessThan(0);
  });
});
