import { describe, expect, it } from "vitest";
import { condensationCache, solveBuilding, type BuildingCombination } from "../../src/building.ts";
import { solveFrame } from "../../src/frame.ts";
import type { FrameSolution } from "../../src/analysis/frame-result.ts";
import { mergeBuilding } from "../../src/model/merge-building.ts";
import type { BuildingModel } from "../../src/model/building-model.ts";
import { referenceModel } from "./reference-model.ts";
import { splitModel, type Origin } from "./split-model.ts";

const MEGABYTES = 1024 * 1024;
const plain: Origin = { turnMdeg: 0, at: [0, 0, 0] };

const BUILDINGS: [string, Record<string, Origin>][] = [
  ["D01", { A: plain }],
  ["D02", { A: plain }],
  ["D04", { A: plain, B: { turnMdeg: 0, at: [0, 0, 2896] } }],
  ["D05", { A: plain, B: { turnMdeg: 0, at: [3000, 0, 2896] } }],
  ["D06", { A: plain, B: { turnMdeg: 0, at: [0, 3594, 0] }, U: { turnMdeg: 90_000, at: [2259, 0, 2591] } }],
];

function solvedBuilding(model: BuildingModel, combo: string): BuildingCombination {
  return solvedIn(model, condensationCache(500 * MEGABYTES), combo);
}

function solvedIn(
  model: BuildingModel,
  cache: ReturnType<typeof condensationCache>,
  combo = "SLS",
): BuildingCombination {
  const solved = solveBuilding(model, cache).combos[combo];
  if (solved === undefined || "refused" in solved) throw new Error("refused");
  return solved;
}

function solvedFrame(model: Parameters<typeof solveFrame>[0], combo: string): FrameSolution {
  const solved = solveFrame(model).combos[combo];
  if (solved === undefined || "refused" in solved) throw new Error("refused");
  return solved;
}

/** Largest difference over largest value, translations (forces) and rotations (moments) apart. */
function apart(ours: readonly (readonly number[])[], theirs: readonly (readonly number[])[], turning: boolean): number {
  const pick = (values: readonly (readonly number[])[]) =>
    values.map((row) => row.filter((_, c) => row.length === 1 || c % 6 >= 3 === turning));
  const a = pick(ours).flat();
  const b = pick(theirs).flat();
  expect(a.length).toBe(b.length);
  const largest = Math.max(...b.map(Math.abs));
  return largest === 0
    ? Math.max(...a.map(Math.abs))
    : Math.max(...a.map((value, n) => Math.abs(value - (b[n] ?? NaN)))) / largest;
}

/** 1e-9 of the largest of its kind; 1e-8 in D05, where bearings of 10⁶ N/mm stand on a rail that is 10⁴ times softer in torsion. */
const ACCURACY: Record<string, number> = { D05: 1e-8 };

// The uncondensed solution of the same lines is the other way of computing; it agrees with an outside solver (reference-buildings.test.ts).
describe.each(BUILDINGS)("%s condensed container by container", (name, origins) => {
  const model = referenceModel(name);
  const whole = solvedFrame(model, "SLS");
  const building = splitModel(model, origins);
  const solved = solvedBuilding(building, "SLS");

  it("gives the inside of every container as the uncondensed solution does, to 1e-9 (D05: 1e-8) of the largest of its kind", () => {
    const accuracy = ACCURACY[name] ?? 1e-9;
    for (const kind of ["displacements", "memberEndForces", "panelFlows"] as const) {
      const ours: number[][] = [];
      const theirs: number[][] = [];
      for (const { id } of building.units) {
        for (const [own, value] of Object.entries(solved.unit(id)[kind])) {
          ours.push([value].flat());
          theirs.push([whole[kind][`${id}:${own}`] ?? whole[kind][`${id}.${own}`] ?? NaN].flat());
        }
      }
      expect(apart(ours, theirs, false), kind).toBeLessThan(accuracy);
      if (kind !== "panelFlows") expect(apart(ours, theirs, true), `${kind}, turning`).toBeLessThan(accuracy);
    }
  });

  it("gives the same reactions and bearing forces, to 1e-9 of the largest", () => {
    for (const kind of ["reactions", "links"] as const) {
      const ids = Object.keys(whole[kind]);
      if (ids.length === 0) continue;
      const ours = ids.map((id) => solved.frame[kind][id] ?? []);
      expect(
        apart(
          ours,
          ids.map((id) => whole[kind][id] ?? []),
          false,
        ),
        kind,
      ).toBeLessThan(1e-9);
    }
  });

  it("is in equilibrium and merges back into the model it was cut from", () => {
    const [fx = NaN, fy = NaN, fz = NaN] = solved.frame.equilibrium;
    const load = Math.max(...Object.values(whole.reactions).flat().map(Math.abs));
    expect(Math.max(Math.abs(fx), Math.abs(fy), Math.abs(fz))).toBeLessThan(1e-9 * load);
    const merged = solvedFrame(mergeBuilding(building), "SLS");
    const ids = Object.keys(whole.displacements);
    const of = (solution: FrameSolution) => ids.map((id) => solution.displacements[id] ?? []);
    expect(apart(of(merged), of(whole), false)).toBeLessThan(1e-9);
  });
});

describe("the condensation cache", () => {
  const model = referenceModel("D04");
  const origins = { A: plain, B: { turnMdeg: 0, at: [0, 0, 2896] } as Origin };
  const split = splitModel(model, origins);
  const retained = [...new Set(split.units.flatMap(({ fragment }) => fragment.retained))].sort();
  const [first, second] = split.units;
  if (first === undefined || second === undefined) throw new Error("two units");
  const share = { ...first.fragment, key: "whole 40HC", retained };
  const alike: BuildingModel = {
    ...split,
    units: [
      { ...first, fragment: share },
      { ...second, fragment: share, loads: first.loads },
    ],
  };

  it("condenses two like containers once, and nothing on a second solution", () => {
    const cache = condensationCache(100 * MEGABYTES);
    solveBuilding(alike, cache);
    expect(cache.condensed).toBe(1);
    solveBuilding(alike, cache);
    expect(cache.condensed).toBe(1);
  });

  it("after one container is edited condenses that one alone", () => {
    const cache = condensationCache(100 * MEGABYTES);
    solveBuilding(alike, cache);
    const edited = { ...share, key: "one panel out", panels: share.panels.slice(1) };
    solveBuilding(
      { ...alike, units: alike.units.map((unit, n) => (n === 0 ? { ...unit, fragment: edited } : unit)) },
      cache,
    );
    expect(cache.condensed).toBe(2);
  });

  it("solved again after an edit, gives the same bits as solved from an empty cache", () => {
    const cache = condensationCache(100 * MEGABYTES);
    solveBuilding(alike, cache);
    const edited = { ...share, key: "one panel out", panels: share.panels.slice(1) };
    const changed = { ...alike, units: alike.units.map((unit, n) => (n === 0 ? { ...unit, fragment: edited } : unit)) };
    expect(solvedIn(changed, cache).frame.displacements).toEqual(
      solvedIn(changed, condensationCache(100 * MEGABYTES)).frame.displacements,
    );
  });

  it("drops the least recently used part once it holds more than its limit, and stays right", () => {
    const cache = condensationCache(1);
    const bounded = solveBuilding(split, cache).combos["SLS"] as BuildingCombination;
    expect(cache.size).toBe(1);
    expect(bounded.frame.reactions).toEqual(solvedBuilding(split, "SLS").frame.reactions);
  });
});
