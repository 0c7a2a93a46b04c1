import { describe, expect, it } from "vitest";
import { claddingCoefficients } from "../../src/codes/loads/asce7/wind/cladding-coefficients.ts";
import { claddingZoneWidths } from "../../src/codes/loads/asce7/wind/cladding-zones.ts";
import { flatRoofCoefficients } from "../../src/codes/loads/asce7/wind/roof-coefficients.ts";
import { leewardWall } from "../../src/codes/loads/asce7/wind/wall-coefficients.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import type { BuildingForm } from "../../src/loads/shape-limit.ts";
import { sampleHazards } from "./sample-hazards.ts";

const ft = 304.8;
const ft2 = 0.09290304;
const { wind } = designBasisFor("IBC 2021");

// Published check values 6.3 (ASCE 7-16 Fig. 27.3-1, from memory).
describe("coefficients of the main system", () => {
  it("of the leeward wall are −0.5 to L/B 1, −0.3 at 2, −0.2 from 4, straight between", () => {
    expect([0.2, 1, 1.5, 2, 3, 4, 9].map(leewardWall)).toEqual(
      [-0.5, -0.5, -0.4, -0.3, -0.25, -0.2, -0.2].map((c) => expect.closeTo(c, 12)),
    );
  });

  it("of a low roof are −0.9 to h, −0.5 to 2h, −0.3 beyond, and −0.18", () => {
    expect(flatRoofCoefficients(0.3, 50).map(({ most }) => most)).toEqual([-0.9, -0.9, -0.5, -0.3]);
    expect(flatRoofCoefficients(0.3, 50).every(({ least }) => least === -0.18)).toBe(true);
  });

  // 1000 ft² = 92.9 m²: −1.3·0.8 = −1.04
  it("of a tall roof are −1.3 to h/2, less over large areas, and −0.7 beyond", () => {
    expect(flatRoofCoefficients(1.2, 100 * ft2).map(({ most }) => most)).toEqual([-1.3, -0.7, -0.7, -0.7]);
    expect(flatRoofCoefficients(1.2, 1000 * ft2)[0]?.most).toBeCloseTo(-1.04, 12);
  });
});

describe("load cases of the wind", () => {
  const cases = wind.loadCases();

  // Fig. 27.3-8: 4 + 4·2 + 4 + 4·2
  it("are 4 of case 1, 8 of case 2, 4 of case 3 and 8 of case 4, each with its own name", () => {
    const count = (prefix: string) => cases.filter(({ id }) => id.startsWith(prefix)).length;
    expect([count("W1"), count("W2"), count("W3"), count("W4")]).toEqual([4, 8, 4, 8]);
    expect(new Set(cases.map(({ id }) => id)).size).toBe(24);
  });

  it("take 100, 75, 75 and 56.3 % with 15 % of eccentricity in cases 2 and 4", () => {
    const parts = (prefix: string) =>
      new Set(
        cases
          .filter(({ id }) => id.startsWith(prefix))
          .flatMap(({ x, y }) =>
            [x, y].map((one) => (one === undefined ? "" : `${one.factor}/${Math.abs(one.eccentricity)}`)),
          ),
      );
    expect(parts("W1")).toEqual(new Set(["1/0", ""]));
    expect(parts("W2")).toEqual(new Set(["0.75/0.15", ""]));
    expect(parts("W3")).toEqual(new Set(["0.75/0"]));
    expect(parts("W4")).toEqual(new Set(["0.563/0.15"]));
  });
});

// ASCE 7-16 Figs. 30.3-1 and 30.3-2A, end points of the charts, from memory; walls with the 10 % of flat roofs taken off.
describe("coefficients of components", () => {
  it("of walls run from ±1.0/1.1/1.4 at 10 ft² to 0.7/0.8/0.8 at 500 ft²", () => {
    const at = (zone: "middle" | "edge", areaFt2: number) =>
      claddingCoefficients({ surface: "wall", zone, effectiveAreaM2: areaFt2 * ft2 });
    expect(at("middle", 10)).toEqual({ inward: expect.closeTo(0.9, 9), outward: expect.closeTo(-0.99, 9) });
    expect(at("edge", 5)).toEqual({ inward: expect.closeTo(0.9, 9), outward: expect.closeTo(-1.26, 9) });
    expect(at("edge", 500)).toEqual({ inward: expect.closeTo(0.63, 9), outward: expect.closeTo(-0.72, 9) });
  });

  // geometric mean of 10 and 500 is 70.71 ft²: halfway on the logarithmic axis, 0.9·(−0.95) = −0.855
  it("are read on a logarithmic area axis", () => {
    const middle = claddingCoefficients({ surface: "wall", zone: "middle", effectiveAreaM2: Math.sqrt(5000) * ft2 });
    expect(middle.outward).toBeCloseTo(-0.855, 9);
  });

  it("of flat roofs are −0.9, −1.7, −2.3, −3.2 for small parts and never more than 0.3 inward", () => {
    const at = (zone: "inner" | "middle" | "edge" | "corner") =>
      claddingCoefficients({ surface: "roof", zone, effectiveAreaM2: 10 * ft2 });
    expect([at("inner"), at("middle"), at("edge"), at("corner")].map(({ outward }) => outward)).toEqual([
      -0.9, -1.7, -2.3, -3.2,
    ]);
    expect(at("corner").inward).toBeCloseTo(0.3, 12);
  });

  // q = 1169.0 Pa (hand value of 115 mph, exposure C, up to 15 ft): edge wall 10 ft²: 1169.0·(1.26 + 0.18) = 1683.4 Pa; inward 1169.0·1.08 = 1262.5 Pa
  it("give 1.683 kPa of suction and 1.262 kPa of pressure on a small part at a wall's edge", () => {
    const part = { surface: "wall", zone: "edge", effectiveAreaM2: 10 * ft2 } as const;
    const pressure = wind.cladding(sampleHazards(), 2896, 0.18, part);
    expect(pressure.outwardPa / 1000).toBeCloseTo(1.6834, 3);
    expect(pressure.inwardPa / 1000).toBeCloseTo(1.2625, 3);
  });

  // 0.613·0.70·0.85·51.4096² = 963.97 Pa in place of K_z 0.575 (2.01·(4.572/365.76)^(2/7) = 0.5747): 963.97·(0.9 + 0.18) = 1041.1 Pa inward in the middle of a wall
  it("never take less than K_z 0.70 in exposure B under 30 ft", () => {
    const pressure = wind.cladding(sampleHazards({ wind: { exposure: "B" } }), 2896, 0.18, {
      surface: "wall",
      zone: "middle",
      effectiveAreaM2: 0.5,
    });
    expect(pressure.inwardPa / 1000).toBeCloseTo(1.0411, 3);
  });

  it("never fall under 16 psf", () => {
    const calm = sampleHazards({ wind: { mph: 40 } });
    const pressure = wind.cladding(calm, 2896, 0.18, { surface: "roof", zone: "inner", effectiveAreaM2: 50 });
    expect(pressure.inwardPa).toBeCloseTo(16 * 47.88025898, 6);
  });

  // 8 ft wide, 9.5 ft high: a = min(0.8, 3.8) = 0.8 < 3 ft → 3 ft; roof strips 5.7 ft, inner from 11.4 ft
  it("have edge strips of 3 ft on the walls of a single unit", () => {
    const widths = claddingZoneWidths(9.5 * ft, 8 * ft);
    expect([widths.wallEdgeMm / ft, widths.roofEdgeMm / ft, widths.roofMiddleMm / ft]).toEqual([
      expect.closeTo(3, 9),
      expect.closeTo(5.7, 9),

      expect.closeTo(11.4, 9),
    ]);
  });
});

describe("shape limits of the wind procedure", () => {
  const plain: BuildingForm = {
    lengthXMm: 12192,
    lengthYMm: 4876,
    heightMm: 5792,
    planFill: 1,
    roofStepMm: 0,
    turnedOff: [],
    soffitShare: 0,
    blocks: 1,
  };
  const failed = (change: Partial<BuildingForm>) =>
    wind
      .shapeLimits({ ...plain, ...change })
      .filter(({ holds }) => !holds)
      .map(({ code }) => code);

  it("all hold for a plain block", () => {
    expect(failed({})).toEqual([]);
  });

  it.each([
    [{ planFill: 0.7 }, "rectangular plan"],
    [{ roofStepMm: 2896 }, "one roof level"],
    [{ turnedOff: ["a"] }, "parallel to the axes"],
    [{ soffitShare: 0.2 }, "closed below"],
    [{ blocks: 2 }, "one block"],
    // four times the least width 2438 is 9752 mm; a 75/h of 1 Hz allows 22.9 m
    [{ lengthYMm: 2438, heightMm: 10_364 }, "rigid"],
    [{ lengthXMm: 40_000, lengthYMm: 40_000, heightMm: 18_300 }, "height for components"],
  ] as const)("name what fails in %j", (change, code) => {
    expect(failed(change)).toEqual([code]);
  });
});
