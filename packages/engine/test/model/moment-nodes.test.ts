import { describe, expect, it } from "vitest";
import { stackedModel, stackedScheme } from "../../bench/support/stacked-building.ts";
import { buildingSystem } from "../../src/analysis/building-system.ts";
import { prepare } from "../../src/analysis/prepare.ts";
import { allClosed } from "../../src/analysis/system.ts";
import { updatedState } from "../../src/analysis/updated-state.ts";
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { solveFrame } from "../../src/frame.ts";
import type { BuildingModel } from "../../src/model/building-model.ts";
import { mergeBuilding } from "../../src/model/merge-building.ts";
import { momentNodes, withMomentNodes } from "../../src/model/moment-nodes.ts";

// A container on its four feet, and at the head of one corner post a bracket of post section, 500 mm out, with 10 kN on its tip.

const name = "1.4D";
const plain = stackedModel(stackedScheme(1), { [name]: { D: 1.4 } });
const [unit] = plain.units;
if (unit === undefined) throw new Error("there is a container");
const head = unit.fragment.nodes.find(({ id, z }) => unit.fragment.retained.includes(id) && z > 1000);
const post = unit.fragment.sections["post"];
if (head === undefined || post === undefined) throw new Error("it has posts");
const at = `${unit.id}:${head.id}`;
const bracket: BuildingModel["between"] = {
  nodes: [{ id: "tip", x: unit.at[0] + head.x, y: unit.at[1] + head.y + 500, z: unit.at[2] + head.z }],
  sections: { bracket: post },
  beams: [{ id: "bracket", i: at, j: "tip", section: "bracket" }],
  loads: { D: { nodal: [{ node: "tip", F: [0, 0, -10_000, 0, 0, 0] }] } },
};
const unaware: BuildingModel = { ...plain, between: bracket };
const turned = momentNodes(unaware);
const bracketed: BuildingModel = { ...unaware, units: plain.units.map((one) => withMomentNodes(one, turned)) };

function standing(model: BuildingModel, cache = condensationCache(1e8)) {
  const answer = solveBuilding(model, cache).combos[name];
  if (answer === undefined || "refused" in answer) throw new Error("stands");
  return answer;
}

describe("the nodes on which something outside a container acts with a moment", () => {
  it("are those that bars between the containers begin at, not those that bear and are locked", () => {
    expect([...momentNodes(plain)]).toEqual([]);
    expect([...turned]).toEqual([at, "tip"]);
    expect(bracketed.units.map(({ fragment }) => fragment.momentNodes)).toEqual([[head.id]]);
  });

  it("are those of links, springs and supports that hold rotations as well", () => {
    const { between } = plain;
    const links = [{ id: "roll", i: "a", j: "b", k: [0, 0, 1e6, 1e9, 0, 0], compression_only: true }] as const;
    const supports = [{ node: "c", fix: ["uz", "rx"], compression_only: false }] as const;
    const springs = [
      { id: "turns", i: "d", k: [0, 0, 0, 0, 0, 1e9] },
      { id: "pulls", i: "e", j: "f", k: [1e5, 1e5, 0, 0, 0, 0] },
    ] as const;
    expect([...momentNodes({ between, springs, links, supports })].toSorted()).toEqual(["a", "b", "c", "d"]);
  });

  it("turn with the container as they do uncondensed, to 1e-9 of the largest movement and rotation", () => {
    const ours = standing(bracketed).frame.displacements;
    const theirs = solveFrame(mergeBuilding(bracketed)).combos[name];
    if (theirs === undefined || "refused" in theirs) throw new Error("stands");
    for (const kind of [
      [0, 1, 2],
      [3, 4, 5],
    ]) {
      const of = (moved: typeof ours) => Object.keys(ours).flatMap((id) => kind.map((c) => moved[id]?.[c] ?? NaN));
      const [a, b] = [of(ours), of(theirs.displacements)];
      const most = Math.max(...b.map(Math.abs));
      expect(Math.max(...a.map((value, n) => Math.abs(value - (b[n] ?? NaN)))) / most).toBeLessThan(1e-9);
    }
  });

  it("keep their rotations after the same container was condensed without them, and the other way round", () => {
    const cache = condensationCache(1e8);
    const first = standing(plain, cache).frame.displacements;
    expect(standing(bracketed, cache).frame.displacements).toEqual(standing(bracketed).frame.displacements);
    expect(standing(plain, cache).frame.displacements).toEqual(first);
  });

  it("alone have rotations between the containers: of the others nothing is left to resist, so that a bearing opens without a factorisation", () => {
    const assembly = buildingSystem(stackedModel(stackedScheme(8)), condensationCache(1e9));
    if (!assembly.stable) throw new Error("stands");
    const { system } = assembly.building.frame;
    const closed = prepare(system, allClosed(system));
    if (!closed.stable) throw new Error("stands");
    expect(closed.prepared.idle).toEqual([]);
    const opened = system.bearings.map((_, b) => {
      const { open, lost } = allClosed(system);
      return updatedState(closed.prepared, { open: open.with(b, 1), lost: lost.with(b, 1) });
    });
    expect(opened.length).toBeGreaterThan(20);
    expect(opened.every((state) => state !== null)).toBe(true);
  });

  it("are never left without their rotations", () => {
    expect(() => solveBuilding(unaware, condensationCache(1e8))).toThrow(
      `a moment acts on "${at}", which is joined without its rotations`,
    );
  });
});
