import { describe, expect, it } from "vitest";
import type { FreeLoad, Scheme } from "@cornerway/schema";
import { deadCase } from "../../src/loads/dead-cases.ts";
import { enteredSnow, enteredWind } from "../../src/loads/entered-actions.ts";
import { downOf, freeLoadsOf } from "../../src/loads/free-loads.ts";
import { imposedCases } from "../../src/loads/imposed-cases.ts";
import { roofLive } from "../../src/loads/roof-live-cases.ts";
import { siteActions } from "../../src/loads/site-actions.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis, framed, sumOf } from "./building-actions.ts";
import { idOf, on, sampleScheme, smallBuildings } from "./sample-scheme.ts";

const common = { id: "q", tag: "Q", containerId: idOf(1), surface: "floor", case: "finish", note: "as told" } as const;
const point: FreeLoad = { ...common, shape: "point", xUm: 2e6, yUm: 1e6, downN: 3000, alongXN: 400, alongYN: 50 };
const line: FreeLoad = { ...common, shape: "line", xUm: 1e6, yUm: 0, toXUm: 4e6, toYUm: 0, downNPerM: 700 };
const area: FreeLoad = {
  ...common,
  shape: "area",
  xUm: 1e6,
  yUm: 0.5e6,
  lengthUm: 2e6,
  widthUm: 1e6,
  pressurePa: 1500,
};
const bearing = (freeLoad: FreeLoad, change: Partial<Scheme> = {}): Scheme =>
  sampleScheme([{ type: "1AAA", xMm: 1000, yMm: 500, zMm: 0, turn: 90 }], { freeLoads: [freeLoad], ...change });
const more = (freeLoad: FreeLoad) => {
  const scheme = bearing(freeLoad);
  const [all, none] = [
    sumOf(scheme, deadCase(scheme, "least")),
    sumOf(scheme, deadCase({ ...scheme, freeLoads: [] }, "least")),
  ];
  return {
    x: all.xN - none.xN,
    y: all.yN - none.yN,
    z: all.zN - none.zN,
    aboutX: all.aboutXNmm - none.aboutXNmm,
    aboutY: all.aboutYNmm - none.aboutYNmm,
  };
};

describe("free loads", () => {
  // Turned a quarter: unit x is site y, unit y is site −x. Spot (2000, 1000) is local (−4096, −219): site (1000 + 219, 500 − 4096).
  it("put a point where it was said, along the unit's own axes", () => {
    const { x, y, z, aboutX, aboutY } = more(point);
    expect([x, y, z]).toEqual([expect.closeTo(-50, 6), expect.closeTo(400, 6), expect.closeTo(-3000, 6)]);
    expect(aboutX).toBeCloseTo(-3000 * -3596, 1);
    expect(aboutY).toBeCloseTo(3000 * 1219, 1);
  });

  // 700 N/m over 3 m = 2100 N in the middle, at 2500 mm: local −3596, site y −3096
  it("spread a line over its length with the same middle", () => {
    const { z, aboutX } = more(line);
    expect(z).toBeCloseTo(-2100, 6);
    expect(aboutX).toBeCloseTo(-2100 * -3096, 1);
    expect(downOf(line)).toBeCloseTo(2100, 9);
  });

  // 1500·2·1 = 3000 N at (2000, 1000)
  it("spread an area over its rectangle", () => {
    const { z, aboutX } = more(area);
    expect(z).toBeCloseTo(-3000, 6);
    expect(aboutX).toBeCloseTo(-3000 * -3596, 1);
    expect(downOf(area)).toBeCloseTo(3000, 9);
  });

  it("go with their kind: plant not at the least, imposed in the patterns of its floor, on a roof with the roof live load", () => {
    const plant = bearing({ ...point, case: "plant" });
    const weight = (scheme: Scheme, state: "most" | "least") => sumOf(scheme, deadCase(scheme, state)).zN;
    const bare = { ...plant, freeLoads: [] };
    expect(weight(plant, "most") - weight(bare, "most")).toBeCloseTo(-3000, 6);
    expect(weight(plant, "least")).toBeCloseTo(weight(bare, "least"), 6);
    const imposed = bearing({ ...point, case: "imposed" });
    const cases = imposedCases(imposed, basis, new Map([[idOf(1), [3000, 12_092]]]));
    expect(cases.map(({ id, loads }) => [id, loads.length])).toEqual([["L everywhere", 1]]);
    const roofed = bearing({ ...point, surface: "roof", case: "imposed" });
    const roof = (scheme: Scheme) => sumOf(scheme, roofLive(scheme, framed(scheme), basis).action).zN;
    expect(roof(roofed) - roof(bare)).toBeCloseTo(-3000, 6);
  });

  it("lie with every snow of the code, and act with every wind of the code or not", () => {
    const site = (freeLoads: Scheme["freeLoads"]) => {
      const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"], { ...on(sampleHazards()), freeLoads });
      const actions = siteActions({ scheme, bearings: new Map(), supports: [], linesOf: () => [] }, basis);
      if (!actions.accepted || actions.site === undefined) throw new Error("the sample has hazards");
      return { scheme, ...actions.site };
    };
    const none = site([]);
    const snow = enteredSnow(none.snow, bearing({ ...area, surface: "roof", case: "snow" }));
    expect(snow.cases.map(({ loads }) => loads.length)).toEqual(none.snow.cases.map(({ loads }) => loads.length + 1));
    const wind = enteredWind(none.wind, bearing({ ...point, surface: "roof", case: "wind" }));
    expect(wind.cases).toHaveLength(2 * none.wind.cases.length);
    expect(freeLoadsOf(none.scheme, "wind")).toEqual([]);
  });
});
