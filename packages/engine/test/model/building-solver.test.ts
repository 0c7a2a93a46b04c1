import { describe, expect, it } from "vitest";
import { buildingSolver, condensationCache, solveBuilding, type BuildingAnswer } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { buildModel } from "../../src/model/build-model.ts";
import type { BuildingModel } from "../../src/model/building-model.ts";
import { modelledBearings, type ModelledBearing } from "../../src/strength/modelled-bearings.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { ownWeight, pressed } from "../strength/one-run.ts";

/** Two units on one another under their weight and a push at one top corner, in three strengths: it lifts feet, then turns over. */
const scheme = drawnUnit({ type: "1CC", above: 1 });
const push = {
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "u2", at: { xMm: 2800, yMm: 1200, zMm: 5100 }, xN: 0, yN: -9000, zN: 0 }],
} as const;
const actions = [ownWeight(scheme, 23_000), pressed(scheme, 500), push];
const analysis = analyse(scheme);
const combos = {
  resting: { own: 1, "floor load": 1.2 },
  leaning: { own: 1, "floor load": 1, push: 0.6 },
  lifting: { own: 1, push: 1 },
  falling: { own: 0.9, push: 6 },
};
const built = buildModel(analysis, actions, combos);
const bearings = modelledBearings(built, analysis.structure.building);

function expectSame(ours: BuildingAnswer | undefined, theirs: BuildingAnswer | undefined): void {
  if (ours === undefined || theirs === undefined) throw new Error("every combination has an answer");
  if ("refused" in ours || "refused" in theirs) return expect(ours).toEqual(theirs);
  expect(ours.frame.open).toEqual(theirs.frame.open);
  const most = Math.max(...Object.values(theirs.frame.displacements).flat().map(Math.abs));
  for (const [node, moved] of Object.entries(theirs.frame.displacements))
    moved.forEach((value, c) =>
      expect(Math.abs((ours.frame.displacements[node]?.[c] ?? NaN) - value)).toBeLessThan(1e-9 * most),
    );
}

describe("a building solved as often as asked", () => {
  const solver = buildingSolver(built.model, condensationCache(1e8));
  const all = solver(combos);

  it("opens bearings under some combinations and refuses another, so that the cases below try something", () => {
    const open = ["resting", "leaning", "lifting"].map((name) => {
      const answer = all.get(name);
      return answer === undefined || "refused" in answer
        ? NaN
        : answer.frame.open.links.length + answer.frame.open.supports.length;
    });
    expect(open[0]).toBe(0);
    expect(open[2]).toBeGreaterThan(0);
    expect(all.get("falling")).toHaveProperty("refused");
  });

  it.each(Object.entries(combos))("gives %s the same bits alone, again and on a solver of its own", (name, combo) => {
    const bits = (answer: BuildingAnswer | undefined) =>
      answer === undefined || "refused" in answer ? answer : answer.movement;
    const alone = buildingSolver(built.model, condensationCache(1e8))({ [name]: combo }).get(name);
    expect(bits(alone)).toEqual(bits(all.get(name)));
    expect(bits(solver({ [name]: combo }).get(name))).toEqual(bits(all.get(name)));
  });

  it.each([[["u1"]], [["u2"]], [["u1", "u2"]]])(
    "with the bearings of %s held is the model whose bearings pull",
    (held) => {
      const names = new Set(bearings.filter(({ ownerId }) => held.includes(ownerId)).map(({ name }) => name));
      const model: BuildingModel = heldModel(built.model, bearings, new Set(held));
      const theirs = solveBuilding(model, condensationCache(1e8)).combos;
      const ours = solver(combos, names);
      for (const name of Object.keys(combos)) expectSame(ours.get(name), theirs[name]);
    },
  );

  it("tells in plain numbers what the frame says by names", () => {
    for (const answer of all.values()) {
      if ("refused" in answer) continue;
      const { frame } = answer;
      const forces = [...Object.entries(frame.links), ...Object.entries(frame.reactions)];
      expect(forces).toHaveLength(bearings.length);
      for (const [name, [x = NaN, y = NaN, z = NaN]] of forces)
        answer.bearing(name).forEach((force, c) => expect(force).toBeCloseTo([x, y, z][c] ?? NaN, 6));
      answer.nodeIds.forEach((id, n) =>
        expect([...answer.movement.subarray(n * 6, n * 6 + 3)].map((value) => value + 0)).toEqual(
          frame.displacements[id]?.slice(0, 3),
        ),
      );
      expect(answer.residual).toBe(frame.residual);
    }
  });
});

/** The model with every bearing of these units and posts holding what lifts, as if connections were there. */
function heldModel(
  model: BuildingModel,
  bearings: readonly ModelledBearing[],
  held: ReadonlySet<string>,
): BuildingModel {
  const names = new Set(bearings.filter(({ ownerId }) => held.has(ownerId)).map(({ name }) => name));
  return {
    ...model,
    links: model.links.map((link) => (names.has(link.id) ? { ...link, compression_only: false } : link)),
    supports: model.supports.map((support) =>
      names.has(support.node) ? { ...support, compression_only: false } : support,
    ),
  };
}
