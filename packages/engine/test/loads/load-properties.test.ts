import { describe, expect, it } from "vitest";
import fc from "fast-check";
import type { Scheme } from "@cornerway/schema";
import type { CaseResultant } from "../../src/loads/case-resultant.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { caseNamed, seismicOf, snowOf, sumOf, windOf } from "./building-actions.ts";
import { sampleScheme, smallBuildings, type Placed } from "./sample-scheme.ts";

const ft = 304.8;
const quarter = { seed: 20_261_125, numRuns: 25 };
/** One to five units of 20 or 40 ft on a half-metre grid, quarter-turned, on two levels. */
const building = fc.array(
  fc.record({
    type: fc.constantFrom("1CC" as const, "1AA" as const),
    xMm: fc.integer({ min: -20, max: 20 }).map((step) => step * 500),
    yMm: fc.integer({ min: -12, max: 12 }).map((step) => step * 500),
    zMm: fc.constantFrom(0, 2591),
    turn: fc.constantFrom(0, 90, 180, 270),
  }),
  { minLength: 1, maxLength: 5 },
);

const expectClose = (ours: number, expected: number, size: number) =>
  expect(Math.abs(ours - expected)).toBeLessThan(1e-9 * Math.max(size, 1));

/** A resultant seen in a mirror that swaps east and west: forces along x and moments about y and z change sign. */
const mirrored = (sum: CaseResultant): CaseResultant => ({
  xN: -sum.xN,
  yN: sum.yN,
  zN: sum.zN,
  aboutXNmm: sum.aboutXNmm,
  aboutYNmm: -sum.aboutYNmm,
  aboutZNmm: -sum.aboutZNmm,
});

const expectSame = (ours: CaseResultant, expected: CaseResultant) => {
  const force = Math.abs(expected.xN) + Math.abs(expected.yN) + Math.abs(expected.zN);
  for (const key of ["xN", "yN", "zN", "aboutXNmm", "aboutYNmm", "aboutZNmm"] as const)
    expectClose(ours[key], expected[key], key.startsWith("about") ? force * 1e5 : force);
};

const inMirror = (placed: readonly Placed[]): Scheme =>
  sampleScheme(placed.map((one) => ({ ...one, xMm: -one.xMm, turn: (540 - (one.turn ?? 0)) % 360 })));

/** Names of wind cases that swap in the mirror. */
const otherHand: readonly (readonly [string, string])[] = [
  ["W1 +x inside pressure", "W1 -x inside pressure"],
  ["W1 +y inside suction", "W1 +y inside suction"],
  ["W2 +y anticlockwise inside pressure", "W2 +y clockwise inside pressure"],
  ["W4 +x+y clockwise inside suction", "W4 -x+y anticlockwise inside suction"],
  ["W least +x", "W least -x"],
];

describe("loads on a mirrored building", () => {
  it("are mirrored: wind, with its torsion", () => {
    fc.assert(
      fc.property(building, (placed) => {
        const [one, other] = [sampleScheme(placed), inMirror(placed)];
        const [winds, mirrorWinds] = [windOf(one, sampleHazards()), windOf(other, sampleHazards())];
        for (const [id, mirrorId] of otherHand)
          expectSame(sumOf(other, caseNamed(mirrorWinds, mirrorId)), mirrored(sumOf(one, caseNamed(winds, id))));
      }),
      quarter,
    );
  });

  it("are mirrored: snow with its drifts", () => {
    fc.assert(
      fc.property(building, (placed) => {
        const [one, other] = [sampleScheme(placed), inMirror(placed)];
        const [snow, mirrorSnow] = [snowOf(one, sampleHazards()), snowOf(other, sampleHazards())];
        expect(mirrorSnow.map(({ id }) => id)).toEqual(snow.map(({ id }) => id));
        snow.forEach((action) =>
          expectSame(sumOf(other, caseNamed(mirrorSnow, action.id)), mirrored(sumOf(one, action))),
        );
      }),
      quarter,
    );
  });

  it("are mirrored: earthquakes", () => {
    fc.assert(
      fc.property(building, (placed) => {
        const [one, other] = [sampleScheme(placed), inMirror(placed)];
        const [forces, mirror] = [seismicOf(one, sampleHazards()).cases, seismicOf(other, sampleHazards()).cases];
        expectSame(
          sumOf(other, caseNamed(mirror, "E -x clockwise with +0.3 y")),
          mirrored(sumOf(one, caseNamed(forces, "E +x anticlockwise with +0.3 y"))),
        );
      }),
      quarter,
    );
  });
});

describe("more of a hazard", () => {
  it("never gives less load on the ground: wind sideways, snow down, earthquake sideways", () => {
    fc.assert(
      fc.property(building, fc.double({ min: 0.1, max: 3, noNaN: true }), (placed, more) => {
        const scheme = sampleScheme(placed);
        const base = sampleHazards();
        const windier = sampleHazards({ wind: { mph: 115 * (1 + more) } });
        const snowier = sampleHazards({ snow: { psf: 20 * (1 + more) } });
        const shaken = sampleHazards({ seismic: { siteValues: { sms: 1.1 * (1 + more), sm1: 0.76 * (1 + more) } } });
        const sideways = (sum: CaseResultant) => Math.sqrt(sum.xN * sum.xN + sum.yN * sum.yN);
        for (const id of ["W1 +x inside pressure", "W3 +x+y inside suction"])
          expect(sideways(sumOf(scheme, caseNamed(windOf(scheme, windier), id)))).toBeGreaterThan(
            sideways(sumOf(scheme, caseNamed(windOf(scheme, base), id))),
          );
        const downs = snowOf(scheme, snowier).map((action) => -sumOf(scheme, action).zN);
        expect(Math.max(...downs)).toBeGreaterThanOrEqual(
          Math.max(...snowOf(scheme, base).map((action) => -sumOf(scheme, action).zN)),
        );
        const shear = (hazards: typeof base) => seismicOf(scheme, hazards).axes.x.forces?.baseShear.result.value ?? 0;
        expect(shear(shaken)).toBeGreaterThanOrEqual(shear(base));
      }),
      quarter,
    );
  });

  it("in the form of a unit more never gives less snow or less earthquake", () => {
    fc.assert(
      fc.property(building, (placed) => {
        const [fewer, more] = [
          sampleScheme(placed),
          sampleScheme([...placed, { type: "1CC", xMm: 40_000, yMm: 0, zMm: 0 }]),
        ];
        const down = (scheme: Scheme) => -sumOf(scheme, caseNamed(snowOf(scheme, sampleHazards()), "S uniform")).zN;
        expect(down(more)).toBeGreaterThanOrEqual(down(fewer));
        const shear = (scheme: Scheme) => seismicOf(scheme, sampleHazards()).axes.x.forces?.baseShear.result.value ?? 0;
        expect(shear(more)).toBeGreaterThan(shear(fewer));
      }),
      quarter,
    );
  });
});

describe("units and places do not matter", () => {
  // 115 mph is 51.4096 m/s by definition of the mile (1609.344 m); 20 psf is 957.605 Pa.
  it("miles per hour or metres per second, pounds or pascals: the same loads", () => {
    const scheme = sampleScheme(smallBuildings["a step"]);
    const metric = sampleHazards({
      wind: { speedMs: (115 * 1609.344) / 3600 },
      snow: { groundPa: (20 * 4.4482216152605) / 0.09290304 },
    });
    const sum = sumOf(scheme, caseNamed(windOf(scheme, sampleHazards()), "W1 +y inside pressure"));
    expectSame(sumOf(scheme, caseNamed(windOf(scheme, metric), "W1 +y inside pressure")), sum);
    const snow = (hazards: typeof metric) => sumOf(scheme, caseNamed(snowOf(scheme, hazards), "S drift")).zN;
    expect(Math.abs(snow(metric) / snow(sampleHazards()) - 1)).toBeLessThan(1e-8);
  });

  it("a building moved on its site takes the same forces; turned a quarter it takes them turned", () => {
    const placed: readonly Placed[] = smallBuildings["an overhang of 3 m"];
    const here = sampleScheme(placed);
    const moved = sampleScheme(placed.map((one) => ({ ...one, xMm: one.xMm + 7000, yMm: one.yMm - 3000 })));
    const turned = sampleScheme(placed.map((one) => ({ ...one, xMm: -one.yMm, yMm: one.xMm, turn: 90 })));
    const force = (scheme: Scheme, id: string) => sumOf(scheme, caseNamed(windOf(scheme, sampleHazards()), id));
    const there = force(here, "W1 +x inside pressure");
    expectClose(force(moved, "W1 +x inside pressure").xN, there.xN, there.xN);
    expectClose(force(turned, "W1 +y inside pressure").yN, there.xN, there.xN);
  });

  it("a building turned off the axes of the site keeps its own axes and its totals", () => {
    const straight = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const askew = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0, turn: 30 }]);
    const across = (scheme: Scheme) =>
      sumOf(scheme, caseNamed(windOf(scheme, sampleHazards()), "W1 +y inside pressure"));
    const sum = across(askew);
    expectClose(Math.sqrt(sum.xN * sum.xN + sum.yN * sum.yN), across(straight).yN, across(straight).yN);
    expect(sum.xN / sum.yN).toBeCloseTo(-Math.tan(Math.PI / 6), 9);
  });
});

describe("torsion of wind and earthquakes", () => {
  // One box, wind along y on 12.192 m: M = 0.75·F·0.15·12.192 m; case 1 gives none. Heights in feet below do not enter.
  it("of wind case 2 is 0.75·F times 15 % of the width", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const winds = windOf(scheme, sampleHazards());
    const full = sumOf(scheme, caseNamed(winds, "W1 +y inside pressure"));
    const turned = sumOf(scheme, caseNamed(winds, "W2 +y anticlockwise inside pressure"));
    expect(Math.abs(full.aboutZNmm)).toBeLessThan(1);
    expect(turned.yN).toBeCloseTo(0.75 * full.yN, 6);
    expect(turned.aboutZNmm / (0.75 * full.yN * 0.15 * 40 * ft)).toBeCloseTo(1, 9);
  });

  // 5 % of 2.438 m times the base shear.
  it("of earthquakes is the force times 5 % of the width across it", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const { cases } = seismicOf(scheme, sampleHazards());
    const sum = sumOf(scheme, caseNamed(cases, "E -x clockwise with +0.3 y"));
    expect(sum.aboutZNmm / (Math.abs(sum.xN) * -0.05 * 2438)).toBeCloseTo(1, 9);
  });
});

describe("walls beside the wind", () => {
  // −0.7·0.85·1169.00 = −695.6 Pa outside and 0.18·1169.00 = 210.4 Pa inside: 906.0 Pa outwards on the end of 2.438 × 2.896 m = 6.397 kN
  it("are drawn out by 0.7 G q with the pressure inside added", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const wind = caseNamed(windOf(scheme, sampleHazards({ wind: { exposure: "C" } })), "W1 +y inside pressure");
    const door = { ...wind, loads: wind.loads.filter((load) => load.kind === "against" && load.face === "door") };
    expect(sumOf(scheme, door).xN / 1000).toBeCloseTo(6.397, 2);
  });
});

describe("the overturning moment of wind", () => {
  // Published check values 10.2, derived: 10 271 lb · 9.5 ft / 2 = 48.8 kip-ft = 66.15 kN·m, walls alone
  it("on the walls of the 40 ft high box is 48.8 kip-ft, within 0.3 %", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    const wind = caseNamed(windOf(scheme, sampleHazards()), "W1 +y inside pressure");
    const walls = {
      ...wind,
      loads: wind.loads.filter((load) => load.kind === "against" && load.face !== "roof" && load.face !== "floor"),
    };
    expect(Math.abs(-sumOf(scheme, walls).aboutXNmm / 1e6 / 1.355818 / 48.8 - 1)).toBeLessThan(0.003);
  });
});

describe("the least wind", () => {
  // 16 psf = 766.08 Pa on 12.192 × 2.896 m = 27.049 kN
  it("is 27.05 kN on the side of one 40 ft unit", () => {
    const scheme = sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]);
    expect(sumOf(scheme, caseNamed(windOf(scheme, sampleHazards()), "W least +y")).yN / 1000).toBeCloseTo(27.049, 2);
  });
});
