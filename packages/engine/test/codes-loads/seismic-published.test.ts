import { describe, expect, it } from "vitest";
import { siteCoefficient } from "../../src/codes/loads/asce7/seismic/site-coefficients.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import type { SeismicDesign } from "../../src/loads/seismic-site.ts";
import { sampleHazards } from "./sample-hazards.ts";

const ft = 304.8;
const { seismic } = designBasisFor("IBC 2021");
/** A site that gives exactly these design accelerations: S_M = 1.5·S_D entered as site values. */
const design = (sds: number, sd1: number, s1 = 0.4): SeismicDesign =>
  seismic.design(sampleHazards({ seismic: { s1, siteValues: { sms: 1.5 * sds, sm1: 1.5 * sd1 } } }));

describe("site coefficients", () => {
  // Published check values 6.5 (ASCE 7-16 Tables 11.4-1 and 11.4-2, from memory).
  it("of class D are the printed ones at the table's points", () => {
    expect([0.25, 0.5, 0.75, 1, 1.25, 1.5].map((ss) => siteCoefficient("Fa", "D", ss))).toEqual([
      1.6, 1.4, 1.2, 1.1, 1, 1,
    ]);
    expect([0.1, 0.2, 0.3, 0.4, 0.5, 0.6].map((s1) => siteCoefficient("Fv", "D", s1))).toEqual([
      2.4, 2.2, 2, 1.9, 1.8, 1.7,
    ]);
  });

  it("of class C are the printed ones, and the default class never goes below 1.2", () => {
    expect([0.25, 0.5, 0.75, 1, 1.5].map((ss) => siteCoefficient("Fa", "C", ss))).toEqual([1.3, 1.3, 1.2, 1.2, 1.2]);
    expect([0.1, 0.5, 0.6].map((s1) => siteCoefficient("Fv", "C", s1))).toEqual([1.5, 1.5, 1.4]);
    expect(siteCoefficient("Fa", "default", 1.5)).toBe(1.2);
  });

  // S_DS = 2/3·1.1·1.0 = 0.7333, S_D1 = 2/3·1.9·0.4 = 0.5067
  it("lead from S_S 1.0 and S_1 0.4 on class D to S_DS 0.733 and S_D1 0.507, category D", () => {
    const site = seismic.design(sampleHazards());
    expect(site.sds).toBeCloseTo(0.73333, 4);
    expect(site.sd1).toBeCloseTo(0.50667, 4);
    expect(site.category).toBe("D");
  });
});

describe("seismic forces", () => {
  // Published check values 6.5, a public worked example (industrial building, inputs from memory): T_a = 0.02·32^0.75... printed 0.448 s with
  // 0.028·32^0.8 (moment frame row) = 0.448; C_u 1.4 → 0.627; C_s = min(1.0/4.5, 0.6/(0.627·4.5)) = min(0.222, 0.2126) = 0.213
  it("of the industrial building with R 4.5 and 32 ft: T_a 0.448 s, T 0.627 s, C_s 0.213", () => {
    const request = {
      r: 4.5,
      kind: "steel moment frame",
      heightMm: 32 * ft,
      storeys: [{ id: "roof", heightMm: 32 * ft, weightN: 1e6 }],
    } as const;
    expect(seismic.forces(design(1, 0.6), request).periodS).toBeCloseTo(0.448, 3);
    const limited = seismic.forces(design(1, 0.6), { ...request, computedPeriodS: 5 });
    expect(limited.periodS).toBeCloseTo(0.627, 3);
    expect(limited.coefficient.result.value).toBeCloseTo(0.2126, 3);
  });

  // Published check values 6.5, derived: T_a = 0.02·9.5^0.75 = 0.108 s; C_s = 1.0/2 = 0.500 and 1.0/3 = 0.333
  it.each([
    [2, 0.5],
    [3, 1 / 3],
  ])("of a one-storey box 9.5 ft high with S_DS 1.0 and R %d: T_a 0.108 s, C_s %d", (r, expected) => {
    const forces = seismic.forces(design(1, 0.6), {
      r,
      kind: "other",
      heightMm: 9.5 * ft,
      storeys: [{ id: "roof", heightMm: 9.5 * ft, weightN: 40_000 }],
    });
    expect(forces.periodS).toBeCloseTo(0.108, 3);
    expect(forces.coefficient.result.value).toBeCloseTo(expected, 9);
  });

  // Published check values 6.5, derived: 9.5/(9.5 + 19) = 1/3 and 19/28.5 = 2/3 with k = 1
  it("of two equal storeys at 9.5 and 19 ft divide one third to two thirds", () => {
    const forces = seismic.forces(design(1, 0.6), {
      r: 2,
      kind: "other",
      heightMm: 19 * ft,
      storeys: [
        { id: "1", heightMm: 9.5 * ft, weightN: 40_000 },
        { id: "2", heightMm: 19 * ft, weightN: 40_000 },
      ],
    });
    const v = forces.baseShear.result.value;
    expect(forces.storeys.map(({ forceN }) => forceN / v)).toEqual([
      expect.closeTo(1 / 3, 9),
      expect.closeTo(2 / 3, 9),
    ]);
  });

  // V = 0.5·80 = 40 kN, F = 13.33 and 26.67 kN. F_p2 = 26.67, F_p1 = 40/80·40 = 20 kN; limits 0.2·1·40 = 8 and 0.4·1·40 = 16 kN: both are cut at 16
  it("of those storeys load each diaphragm with no more than 0.4·S_DS·I_e·w", () => {
    const forces = seismic.forces(design(1, 0.6), {
      r: 2,
      kind: "other",
      heightMm: 19 * ft,
      storeys: [
        { id: "1", heightMm: 9.5 * ft, weightN: 40_000 },
        { id: "2", heightMm: 19 * ft, weightN: 40_000 },
      ],
    });
    expect(forces.storeys.map(({ diaphragmN }) => diaphragmN)).toEqual([
      expect.closeTo(16_000, 6),
      expect.closeTo(16_000, 6),
    ]);
  });

  // T is C_u·T_a = 1.4·0.02·400^0.75 = 1.4·1.78885 = 2.50440 s: 0.6·2/(2.5044²·2) = 0.095663; S_DS/R = 0.5
  it("fall with the square of the period past the long-period transition", () => {
    const site = seismic.design(sampleHazards({ seismic: { longPeriodS: 2, siteValues: { sms: 1.5, sm1: 0.9 } } }));
    const tall = seismic.forces(site, {
      r: 2,
      kind: "other",
      heightMm: 400 * ft,
      computedPeriodS: 9,
      storeys: [{ id: "roof", heightMm: 400 * ft, weightN: 1e6 }],
    });
    expect(tall.periodS).toBeCloseTo(2.5044, 4);
    expect(tall.coefficient.result.value).toBeCloseTo(0.095663, 5);
  });

  // R = 8: V = 0.125·80 = 10 kN; F = 3.333 and 6.667. Upper: 6.667/40·40 = 6.667, floor 0.2·40 = 8 → 8. Lower: (3.333 + 6.667)/80·40 = 5 → 8.
  // R = 3: V = 26.667; upper 17.778 → cut at 16; lower 26.667/80·40 = 13.333, between 8 and 16; the forces above it count, those below do not.
  it("load a diaphragm with its share of the forces at it and above", () => {
    const diaphragms = (r: number) =>
      seismic
        .forces(design(1, 0.6), {
          r,
          kind: "other",
          heightMm: 19 * ft,
          storeys: [
            { id: "1", heightMm: 9.5 * ft, weightN: 40_000 },
            { id: "2", heightMm: 19 * ft, weightN: 40_000 },
          ],
        })
        .storeys.map(({ diaphragmN }) => diaphragmN);
    expect(diaphragms(8)).toEqual([expect.closeTo(8000, 6), expect.closeTo(8000, 6)]);
    expect(diaphragms(3)).toEqual([expect.closeTo(13_333.333, 2), expect.closeTo(16_000, 6)]);
    // R = 4.5: V = 17.778, upper 11.852 within its limits: only the force of the top level itself
    expect(diaphragms(4.5)[1]).toBeCloseTo(11_851.85, 1);
  });

  // S_1 = 0.75, R = 8: S_DS/R = 0.05, floor 0.5·0.75/8 = 0.046875; 0.044·0.4 = 0.0176 → with S_DS 0.3: C_1 = 0.0375 < 0.046875
  it("never fall under 0.5·S_1/(R/I_e) near great faults", () => {
    const near = design(0.3, 0.3, 0.75);
    const forces = seismic.forces(near, {
      r: 8,
      kind: "other",
      heightMm: 9.5 * ft,
      storeys: [{ id: "r", heightMm: 2896, weightN: 1000 }],
    });
    expect(forces.coefficient.result.value).toBeCloseTo(0.046875, 9);
    expect(near.category).toBe("E");
  });
});

describe("design category", () => {
  // Tables 11.6-1 and 11.6-2 at both sides of each limit.
  it.each([
    [0.166, 0.066, "A"],
    [0.167, 0.066, "B"],
    [0.329, 0.132, "B"],
    [0.33, 0.1, "C"],
    [0.2, 0.133, "C"],
    [0.499, 0.199, "C"],
    [0.5, 0.1, "D"],
    [0.3, 0.2, "D"],
  ] as const)("of S_DS %d and S_D1 %d is %s", (sds, sd1, category) => {
    const exact = sampleHazards({
      seismic: { ss: 0.5, s1: 0.1, siteValues: { sms: 1.5 * sds + 1e-12, sm1: 1.5 * sd1 + 1e-12 } },
    });
    expect(seismic.design(exact).category).toBe(category);
  });

  it("of risk category IV is one step more severe in the middle", () => {
    const at = (sds: number) =>
      seismic.design(
        sampleHazards({
          riskCategory: "IV",
          seismic: { ss: 0.5, s1: 0.1, siteValues: { sms: 1.5 * sds + 1e-12, sm1: 0.01 } },
        }),
      ).category;
    expect([0.1, 0.2, 0.4, 0.6].map(at)).toEqual(["A", "C", "D", "D"]);
  });
});
