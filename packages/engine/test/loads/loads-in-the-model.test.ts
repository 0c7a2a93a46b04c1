import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { siteActions } from "../../src/loads/site-actions.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis, sumOf } from "./building-actions.ts";
import { on, sampleScheme, smallBuildings, tankOn, usesOf } from "./sample-scheme.ts";

/** The two-storey building with a step, each ground unit on four pads under its fittings. */
const scheme: Scheme = (() => {
  const drawn = sampleScheme(smallBuildings["a step"]);
  const pads = drawn.containers.slice(0, 2).flatMap(({ id, xUm, yUm }) =>
    [-5992.5, 5992.5].flatMap((x) =>
      [-1129.5, 1129.5].map((y) => ({
        id: `pad-${id}-${x > 0 ? "e" : "w"}-${y > 0 ? "n" : "s"}`,
        tag: "P",
        xUm: xUm + x * 1000,
        yUm: yUm + y * 1000,
        topZUm: 0,
        lengthUm: 400_000,
        widthUm: 400_000,
        depthUm: 300_000,
        turnMdeg: 0,
      })),
    ),
  );
  return {
    ...drawn,
    ...on(sampleHazards()),
    pads: pads.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    uses: usesOf(3, "dwelling"),
    freeLoads: [tankOn(3)],
  };
})();

const actions = siteActions({ scheme, bearings: new Map(), supports: [], linesOf: () => [] }, basis);

/** Sum of the ground's reactions, N, beside a weight that keeps every bearing shut. */
function reactionsTo(action: ActionCase): [number, number, number] {
  const ballast: ActionCase = {
    id: "ballast",
    symbol: "D",
    loads: scheme.containers.map(({ id }) => ({ kind: "own weight", containerId: id, weightN: 1e6 })),
  };
  const sums = { with: { ballast: 1, [action.id]: 1 }, without: { ballast: 1 } };
  const { model } = buildModel(analyse(scheme), [ballast, action], sums);
  const result = solveBuilding(model, condensationCache(1e8));
  const total = (name: "with" | "without") => {
    const combination = result.combos[name];
    if (combination === undefined || "refused" in combination) throw new Error(`no equilibrium for ${action.id}`);
    return Object.values(combination.frame.reactions).reduce<[number, number, number]>(
      ([x, y, z], [a = 0, b = 0, c = 0]) => [x + a, y + b, z + c],
      [0, 0, 0],
    );
  };
  const [loaded, unloaded] = [total("with"), total("without")];
  return [loaded[0] - unloaded[0], loaded[1] - unloaded[1], loaded[2] - unloaded[2]];
}

describe("the solved building", () => {
  if (!actions.accepted) throw new Error("the sample is accepted");
  const { dead, imposed, roofLive, site } = actions;
  if (site === undefined) throw new Error("the sample has hazards");
  const { snow, wind, seismic } = site;
  const some = (cases: readonly ActionCase[], id: string) => cases.filter((one) => one.id === id);

  it.each([
    dead.most,
    ...imposed.slice(0, 1),
    roofLive.action,
    ...snow.cases,
    ...some(wind.cases, "W1 +x inside pressure"),
    ...some(wind.cases, "W4 -x+y clockwise inside suction"),
    ...some(seismic.cases, "E +y anticlockwise with +0.3 x"),
  ])("hands all of $id to the ground, to 0.1 % of its size", (action) => {
    const sum = sumOf(scheme, action);
    const size = Math.abs(sum.xN) + Math.abs(sum.yN) + Math.abs(sum.zN);
    const reactions = reactionsTo(action);
    [sum.xN, sum.yN, sum.zN].forEach((applied, axis) =>
      expect(Math.abs((reactions[axis] ?? Number.NaN) + applied)).toBeLessThan(1e-3 * size),
    );
  });

  it("never answers more load with a smaller sum of reactions", () => {
    const [, , single] = reactionsTo(dead.most);
    const [first] = imposed;
    if (first === undefined) throw new Error("dwellings are loaded");
    const [, , more] = reactionsTo({ ...dead.most, loads: [...dead.most.loads, ...first.loads] });
    expect(more).toBeGreaterThan(single);
  });
});
