import { describe, expect, it } from "vitest";
import type { DesignBasis } from "../../src/loads/design-basis.ts";
import { patchForceN, type ActionCase } from "../../src/loads/action-case.ts";
import { imposedCases } from "../../src/loads/imposed-cases.ts";
import { basis } from "./building-actions.ts";
import { idOf, usesOf, sampleScheme, smallBuildings } from "./sample-scheme.ts";

const loadedUnits = ({ loads }: ActionCase) => loads.flatMap((load) => (load.kind === "on" ? [load.containerId] : []));
const forceKn = ({ loads }: ActionCase) =>
  loads.reduce((sum, load) => (load.kind === "on" ? sum + patchForceN(load.patch) : sum), 0) / 1000;

/** An edition of nowhere: 1 kPa everywhere. Nothing that makes cases may notice. */
const nowhere: DesignBasis = {
  ...basis,
  codes: { building: "IBC 2021", loads: "none", steel: "none", coldFormed: "none", certainty: "memory" },
  gravity: {
    ...basis.gravity,
    occupancy: (occupancy) => ({ ...basis.gravity.occupancy(occupancy), pressurePa: 1000, partitionsPa: 0 }),
  },
};

describe("imposedCases", () => {
  const dwelling = (count: number) => ({ uses: usesOf(count, "dwelling") });

  it("load everything, every other unit both ways, and each unit alone, each pattern once", () => {
    const scheme = sampleScheme([0, 1, 2].map((at) => ({ type: "1AA", xMm: 0, yMm: at * 2438, zMm: 0 })));
    const cases = imposedCases({ ...scheme, ...dwelling(3) }, basis, new Map());
    expect(cases.map((one) => [one.id, loadedUnits(one)])).toEqual([
      ["L everywhere", [idOf(1), idOf(2), idOf(3)]],
      ["L every other unit", [idOf(1), idOf(3)]],
      ["L the other units", [idOf(2)]],
      ["L unit unit-01", [idOf(1)]],
      ["L unit unit-03", [idOf(3)]],
    ]);
  });

  it("shift the alternation from storey to storey", () => {
    const scheme = sampleScheme(smallBuildings["a step"]);
    const [, alternate] = imposedCases({ ...scheme, ...dwelling(3) }, basis, new Map());
    expect(alternate === undefined ? [] : loadedUnits(alternate)).toEqual([idOf(1)]); // ground 0, 1; first 1
  });

  // Bearings at 0.1 and 9.19 m: an overhang of 12.192 − 9.19 = 3.002 m. 1 kPa: 3.002·2.438 = 7.319 kN of 29.724 kN
  it("load an overhang alone and the span alone, under any code", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const cases = imposedCases({ ...scheme, ...dwelling(1) }, nowhere, new Map([[idOf(1), [100, 9190]]]));
    expect(cases.map(({ id }) => id)).toEqual(["L everywhere", "L overhangs", "L spans"]);
    expect(cases.map(forceKn)).toEqual([
      expect.closeTo(29.724, 2),
      expect.closeTo(7.319, 2),
      expect.closeTo(22.405, 2),
    ]);
  });

  // Bearings 3.0 and 12.0 m from the front end: 3.0·2.438 = 7.314 kN ahead of them; the last 100 mm are the fitting's own
  it("find an overhang at the front end, too", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const cases = imposedCases({ ...scheme, ...dwelling(1) }, nowhere, new Map([[idOf(1), [3000, 12_092]]]));
    expect(cases.map((one) => [one.id, forceKn(one)])).toEqual([
      ["L everywhere", expect.closeTo(29.724, 2)],
      ["L overhangs", expect.closeTo(7.314, 3)],
      ["L spans", expect.closeTo(22.41, 2)],
    ]);
  });

  // 40 psf = 1.915 kPa on 29.724 m² = 56.93 kN; drawn 3 kPa is more: 89.17 kN
  it("take the heavier of what is drawn and what the occupancy asks", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const drawn = {
      ...scheme,
      loads: [{ id: "l", containerId: idOf(1), surface: "floor" as const, case: "imposed" as const, pressurePa: 3000 }],
    };
    const force = (of: typeof scheme) =>
      forceKn(imposedCases({ ...of, ...dwelling(1) }, basis, new Map())[0] ?? { id: "", symbol: "L", loads: [] });
    expect(force(scheme)).toBeCloseTo(56.93, 2);
    expect(force(drawn)).toBeCloseTo(89.17, 2);
  });

  it("are none where nothing is used", () => {
    expect(imposedCases(sampleScheme(smallBuildings["a step"]), basis, new Map())).toEqual([]);
  });
});
