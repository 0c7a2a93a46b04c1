import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { condensationCache, solveBuilding, type BuildingCombination } from "../../src/building.ts";
import { solveFrame } from "../../src/frame.ts";
import { evenPatch, patchForceN, type ActionCase } from "../../src/loads/action-case.ts";
import { containerDimensions } from "../../src/catalog/container-dimensions.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { usualAssumptions as assumptions } from "../../src/model/model-assumptions.ts";
import { mergeBuilding } from "../../src/model/merge-building.ts";
import { readAnalyticalModel } from "../../src/model/read-analytical-model.ts";
import { sampleScheme, idOf, type Placed } from "../loads/sample-scheme.ts";
import { stackedModel, stackedScheme } from "../../bench/support/stacked-building.ts";

const { lengthMm, heightMm, holeSpacingLengthwiseMm: L } = containerDimensions("1AAA");
const weight = (...ids: string[]): ActionCase => ({
  id: "D",
  symbol: "D",
  loads: ids.map((containerId) => ({ kind: "own weight", containerId, weightN: 40_000 })),
});
const wind = (containerId: string, pressurePa: number): ActionCase => ({
  id: "W",
  symbol: "W",
  loads: [
    {
      kind: "against",
      containerId,
      face: "right",
      patch: evenPatch(containerDimensions("1AAA").face("right"), pressurePa),
    },
  ],
});

function solved(placed: Placed[], actions: ActionCase[], combo: Record<string, number>) {
  const built = buildModel(analyse(sampleScheme(placed)), actions, { c: combo }, assumptions);
  return { built, result: solveBuilding(built.model, condensationCache(1e9)).combos["c"] };
}

function stands(result: ReturnType<typeof solved>["result"]): BuildingCombination {
  if (result === undefined || "refused" in result) throw new Error(result?.refused ?? "no combination");
  return result;
}

const single: Placed[] = [{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }];
const stack: Placed[] = [...single, { type: "1AAA", xMm: 0, yMm: 0, zMm: heightMm }];

describe("a scheme as a line model", () => {
  it("puts a quarter of the weight of a whole container on each corner, and no level reaction anywhere", () => {
    const { frame } = stands(solved(single, [weight(idOf(1))], { D: 1 }).result);
    const reactions = Object.values(frame.reactions);
    expect(reactions).toHaveLength(4);
    for (const [x = NaN, y = NaN, z = NaN] of reactions) {
      expect(Math.hypot(x, y)).toBeLessThan(1e-3);
      // front end closed, door end open: within 2 percent of a quarter
      expect(Math.abs(z / 10_000 - 1)).toBeLessThan(0.02);
    }
  });

  it("carries a stack corner on corner with no level force in any joint under upright load (locks at play)", () => {
    const { built, result } = solved(stack, [weight(idOf(1), idOf(2))], { D: 1 });
    expect(built.model.links).toHaveLength(4);
    for (const [x = NaN, y = NaN] of Object.values(stands(result).frame.links))
      expect(Math.hypot(x, y)).toBeLessThan(1e-3);
  });

  it("tied both ways at every corner, the same stack has level forces in its joints", () => {
    const built = buildModel(
      analyse(sampleScheme(stack)),
      [weight(idOf(1), idOf(2))],
      { c: { D: 1 } },
      { ...assumptions, holds: "tied" },
    );
    const { frame } = stands(solveBuilding(built.model, condensationCache(1e9)).combos["c"]);
    expect(Math.max(...Object.values(frame.links).map(([x = 0, y = 0]) => Math.hypot(x, y)))).toBeGreaterThan(100);
  });

  it("wind of 0.3 kN/m² on the side of a 40 ft container: the sum of reactions is the wind and the weight, by hand 0.3·12.192·2.896 = 10.59 kN", () => {
    const { frame } = stands(solved(single, [weight(idOf(1)), wind(idOf(1), 300)], { D: 1, W: 1 }).result);
    const sum = [0, 1, 2].map((c) => Object.values(frame.reactions).reduce((total, r) => total + (r[c] ?? NaN), 0));
    expect(sum[1]).toBeCloseTo(-0.3e-3 * lengthMm * heightMm, 3);
    expect(sum[2]).toBeCloseTo(40_000, 3);
    expect(sum[1]).toBeCloseTo(-patchForceN(evenPatch(containerDimensions("1AAA").face("right"), 300)), 6);
  });

  it("a bearing that lifts holds nothing: where the wind lifts the corner that held the unit both ways, another corner takes over and all level force is there", () => {
    // by hand: 40 kN on 2.259 m turns over at w·12.192·2.896²/2 = 40·2.259/2, w = 0.884 kN/m²; the stiff front end lifts first
    const wind8 = stands(solved(single, [weight(idOf(1)), wind(idOf(1), 800)], { D: 1, W: 1 }).result).frame;
    expect(wind8.open.supports.length).toBeGreaterThan(0);
    for (const node of wind8.open.supports) expect(wind8.reactions[node]).toEqual([0, 0, 0, 0, 0, 0]);
    const level = Object.values(wind8.reactions).reduce((sum, [, y = NaN]) => sum + y, 0);
    expect(level).toBeCloseTo(-0.8e-3 * lengthMm * heightMm, 2);
    expect(solved(single, [weight(idOf(1)), wind(idOf(1), 900)], { D: 1, W: 1 }).result).toHaveProperty("refused");
    expect(solved(single, [weight(idOf(1)), wind(idOf(1), 870)], { D: 1, W: 1 }).result).not.toHaveProperty("refused");
  });

  it("reports a container on one bearing as not held in plan", () => {
    const tower: Placed[] = [...single, { type: "1CC", xMm: L / 2, yMm: 0, zMm: heightMm, turn: 90 }];
    const built = buildModel(analyse(sampleScheme(tower)), [], { c: {} }, assumptions);
    const own = built.plan.bearings.filter(({ above }) => "unitId" in above && above.unitId === idOf(2)).length;
    expect(built.notes.some((note) => note.kind === "no hold in plan")).toBe(own < 2);
  });

  it("writes itself in the exchange format, which reads back and solves to the same bearing forces", () => {
    const { built, result } = solved(stack, [weight(idOf(1), idOf(2))], { D: 1 });
    const reading = readAnalyticalModel(JSON.parse(JSON.stringify(mergeBuilding(built.model))));
    if (!reading.ok) throw new Error(`${reading.path}: ${reading.message}`);
    const again = solveFrame(reading.model).combos["c"];
    if (again === undefined || "refused" in again) throw new Error("refused");
    for (const [id, f] of Object.entries(stands(result).frame.links))
      expect(again.links[id]?.[2]).toBeCloseTo(f[2] ?? NaN, 3);
  });

  it("a framed window stands in its sheet, held by the folds above and below it", () => {
    const scheme = sampleScheme(single, {
      openings: [
        {
          id: "w",
          tag: "W",
          containerId: idOf(1),
          face: "left",
          use: "window",
          offsetUm: 3_000_000,
          sillUm: 1_000_000,
          widthUm: 1_500_000,
          heightUm: 1_200_000,
          framed: true,
        },
      ],
    });
    const built = buildModel(analyse(scheme), [weight(idOf(1))], { c: { D: 1 } }, assumptions);
    expect(built.model.units[0]?.fragment.beams.some(({ id }) => id.startsWith("fold"))).toBe(true);
    stands(solveBuilding(built.model, condensationCache(1e9)).combos["c"]);
  });
});

describe("condensed and uncondensed solutions of whole schemes", () => {
  it("agree to 1e-9 of the largest movement and rotation and 1e-7 of the largest bearing force, with windows, passages, ties and pattern loads", () => {
    const model = stackedModel(stackedScheme(8));
    const condensed = solveBuilding(model, condensationCache(1e9)).combos;
    const whole = solveFrame(mergeBuilding(model)).combos;
    for (const name of ["1.2D+1.6L1", "1.2D+WX"]) {
      const [a, b] = [stands(condensed[name]), whole[name]];
      if (b === undefined || "refused" in b) throw new Error("refused");
      const ids = Object.keys(a.frame.displacements);
      for (const kind of [
        [0, 1, 2],
        [3, 4, 5],
      ]) {
        const of = ({ displacements }: typeof b) => ids.flatMap((id) => kind.map((c) => displacements[id]?.[c] ?? NaN));
        const [ours, theirs] = [of(a.frame), of(b)];
        const largest = Math.max(...theirs.map(Math.abs));
        ours.forEach((value, n) => expect(Math.abs(value - (theirs[n] ?? NaN))).toBeLessThan(1e-9 * largest));
      }
      const most = Math.max(...Object.values(b.links).map((f) => Math.abs(f[2] ?? NaN)));
      for (const [id, f] of Object.entries(a.frame.links))
        expect(Math.abs((f[2] ?? NaN) - (b.links[id]?.[2] ?? NaN))).toBeLessThan(1e-7 * most);
    }
  });
});

describe("loads on faces", () => {
  it("reach the ground in full, whatever patch of floor, roof or walls they act on", () => {
    const faces = ["floor", "roof", "left", "right", "front", "door"] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...faces),
        fc.tuple(fc.double({ min: 0, max: 0.9, noNaN: true }), fc.double({ min: 0, max: 0.9, noNaN: true })),
        (face, [a, b]) => {
          const outline = containerDimensions("1AAA").face(face);
          const rect = {
            u0: outline.u1 * a,
            u1: outline.u1 * (a + 0.1),
            v0: outline.v1 * b,
            v1: outline.v1 * (b + 0.1),
          };
          const patch = evenPatch(rect, 1000);
          const load =
            face === "floor" || face === "roof"
              ? ({ kind: "on", containerId: idOf(1), surface: face, patch } as const)
              : ({ kind: "against", containerId: idOf(1), face, patch } as const);
          const { frame } = stands(
            solved(single, [weight(idOf(1)), { id: "P", symbol: "L", loads: [load] }], { D: 1, P: 1 }).result,
          );
          const sum = [0, 1, 2].map((c) =>
            Object.values(frame.reactions).reduce((total, r) => total + (r[c] ?? NaN), 0),
          );
          const force = patchForceN(patch);
          const expected = {
            floor: [0, 0, force],
            roof: [0, 0, force],
            left: [0, force, 0],
            right: [0, -force, 0],
            front: [-force, 0, 0],
            door: [force, 0, 0],
          }[face];
          [0, 1, 2].forEach((c) => expect(sum[c]).toBeCloseTo((expected[c] ?? NaN) + (c === 2 ? 40_000 : 0), 2));
        },
      ),
      { seed: 20260106, numRuns: 40 },
    );
  });
});
