import { describe, expect, it } from "vitest";
import { steels, type Steel } from "../../src/catalog/materials.ts";
import { corrugatedSheet, folds, type Fold } from "../../src/catalog/sections/corrugated-sheet.ts";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { localRailMoment, railAtSeat } from "../../src/checks/rail-at-seat.ts";
import { sheetBending } from "../../src/checks/sheet-bending.ts";
import { sheetCrushing } from "../../src/checks/sheet-crushing.ts";
import { annexD } from "../../src/checks/sheet-shear/annex-d.ts";
import { foldStiffness } from "../../src/checks/sheet-shear/fold-stiffness.ts";
import { sheetShear } from "../../src/checks/sheet-shear/sheet-shear.ts";
import { thinTubeFlexure } from "../../src/codes/cold-formed/thin-tube.ts";
import { stated, step } from "../codes-steel/support/steel-answers.ts";

const expectWithin = (ours: number, hand: number, part: number) =>
  expect(Math.abs(ours / hand - 1), `ours ${ours}, reference ${hand}`).toBeLessThan(part);
const steel = (fyMpa: number): Steel => ({ ...steels.unproved, fyMpa });

describe("foldStiffness, against the table of orthotropic constants (derived there, E 210 000, ν 0.3)", () => {
  it.each([
    ["side", 1.6, 7.401e4, 7.576e7, 121.4],
    ["side", 2, 1.445e5, 9.474e7, 151.8],
    ["end", 2, 1.233e5, 2.155e8, 129.4],
    ["roof", 2, 1.396e5, 3.994e7, 146.6],
  ] as const)("%s %d: D_x %d, D_y %d N·mm, G t %d kN/mm", (panel, t, weak, strong, shear) => {
    const stiffness = foldStiffness(corrugatedSheet(folds[panel], t), 210_000, 0.3);
    expectWithin(stiffness.weakNmm, weak, 0.0005);
    expectWithin(stiffness.strongNmm, strong, 0.0005);
    expectWithin(stiffness.shearNPerMm / 1e3, shear, 0.0005);
  });

  it("side 1.6 across its folds: 318 N/mm, 9.5e-4 of a flat sheet", () => {
    const stiffness = foldStiffness(corrugatedSheet(folds.side, 1.6), 210_000, 0.3);
    expectWithin(stiffness.acrossNPerMm, 318, 0.002);
    expectWithin(stiffness.acrossNPerMm / (210_000 * 1.6), 9.5e-4, 0.005);
  });
});

describe("annexD, against the table of check cases (derived there)", () => {
  const girder: Fold = { outerFlatMm: 300, slopeMm: 200, innerFlatMm: 300, depthMm: 150 };
  it.each([
    ["side 1.6", folds.side, 1.6, 2350, 343, 0.6719, 0.7316, 2.008, 0.331],
    ["side 2.0", folds.side, 2, 2350, 343, 0.5375, 0.8, 1.899, 0.3654],
    ["girder web", girder, 3, 1500, 355, 1.4215, 0.4954, 0.37, 1],
  ] as const)(
    "%s: λ_l, χ_l, λ_g, χ_g as printed",
    (_, fold, t, heightMm, fy, slenderLocal, local, slenderGlobal, global) => {
      const { working } = {
        working: annexD({ sheet: corrugatedSheet(fold, t), steel: steel(fy), heightMm, modulusMpa: 210_000 }),
      };
      expectWithin(step(working, "λ_l"), slenderLocal, 0.0005);
      expectWithin(step(working, "χ_l"), local, 0.0005);
      expectWithin(step(working, "λ_g"), slenderGlobal, 0.001);
      expectWithin(step(working, "χ_g"), global, 0.0007);
    },
  );

  it.each([
    ["L1A", 1.94, 994, 292, 280, 1.37],
    ["L1B", 2.59, 994, 335, 502, 1.44],
    ["L2A", 1.94, 1445, 282, 337, 1.16],
  ] as const)(
    "test %s (t %d, h %d, f_y %d) failed at %d kN, %d times Annex D (Leiva-Aravena, from memory)",
    (_, t, heightMm, fy, testKn, ratio) => {
      const sheet = corrugatedSheet({ outerFlatMm: 140, slopeMm: 50, innerFlatMm: 140, depthMm: 50 }, t);
      const ours = (annexD({ sheet, steel: steel(fy), heightMm, modulusMpa: 210_000 }).result.value * heightMm) / 1e3;
      expectWithin(testKn / ours, ratio, 0.005);
    },
  );
});

describe("sheetShear", () => {
  const panel = (t: number, heightMm: number, fy = 235) => ({
    sheet: corrugatedSheet(folds.side, t),
    steel: steel(fy),
    heightMm,
    modulusMpa: 200_000,
  });
  const flow = (t: number, heightMm: number, fy = 235) => stated(sheetShear(panel(t, heightMm, fy), "ASD")).available;

  it("is judgement, and says so", () => {
    expect(stated(sheetShear(panel(1.6, 2350), "LRFD")).working.certainty).toBe("common practice");
  });

  it("is never above any of its three forms", () => {
    const { working } = stated(sheetShear(panel(1.6, 2350), "LRFD"));
    for (const part of working.parts) expect(step(working, "v_n")).toBeLessThanOrEqual(part.result.value);
    expect(working.parts).toHaveLength(3);
  });

  it("the interaction of both bucklings governs a whole side wall: 41.1 MPa, 65.8 N/mm (by hand)", () => {
    // E 200 000: τ_l 438.3 × 200/210 = 417.4; τ_g 54.6 × 31.6/36 × 200/210 = 45.6; 1/(1/417.4 + 1/45.6) = 41.1; × 1.6
    expectWithin(step(stated(sheetShear(panel(1.6, 2350), "LRFD")).working, "v_n"), 65.8, 0.003);
  });

  it("a side wall bears far more than the code's table allows, 1.23 N/mm", () => {
    expect(flow(1.6, 2350)).toBeGreaterThan(20 * 1.23);
  });

  it("thicker is never weaker, taller is never stronger, a higher yield is never weaker", () => {
    for (const h of [500, 1000, 2000, 2896]) {
      expect(flow(2, h)).toBeGreaterThanOrEqual(flow(1.6, h));
      expect(flow(1.6, h + 100)).toBeLessThanOrEqual(flow(1.6, h));
      expect(flow(1.6, h, 343)).toBeGreaterThanOrEqual(flow(1.6, h));
    }
  });
});

describe("sheetBending", () => {
  it("side 1.6, F_y 343: flat 72 has λ 0.980, 79 % works, M_n 5517 N·mm/mm (by hand)", () => {
    // λ = √(343/(4 × 180 762 × (1.6/72)²)) = √(343/357.1) = 0.980; ρ = (1 − 0.2245)/0.980 = 0.791
    // S_e = 19.07 − 2 × 0.209 × 72 × 1.6 × 18²/(278 × 18.8) = 19.07 − 2.99 = 16.08 mm³/mm; × 343 = 5517 N·mm/mm
    const result = stated(
      sheetBending(corrugatedSheet(folds.side, 1.6), steel(343), { edition: "2016", method: "LRFD" }),
    );
    expectWithin(step(result.working, "ρ"), 0.791, 0.002);
    expectWithin(result.available, 0.9 * 5517, 0.003);
  });
});

describe("localRailMoment", () => {
  const sheet = corrugatedSheet(folds.side, 1.6);

  it("T of a side wall of 1.6 is 198.5 kN/mm at E 200 000", () => {
    const working = localRailMoment({ element: "top side rail", railIMm4: 371_000, sheet, forceN: 1 });
    expectWithin(step(working, "T"), 198_500, 0.001);
  });

  it("20 kN on a 60×60×3 top rail gives 0.72 kN·m; an explicit model of the folds gives 0.75 (within 7 %)", () => {
    const working = localRailMoment({ element: "top side rail", railIMm4: 371_000, sheet, forceN: -20_000 });
    expectWithin(working.result.value, 0.75e6, 0.07);
    expectWithin(working.result.value, 0.5 * 20_000 * 72.03, 0.001);
  });

  // ℓ 72.03 mm; over 200 mm x = 200/(4 × 72.03) = 0.6942: e^−x 0.4995 × sin x 0.6398 / x = 0.4603; × 0.5 × 20 000 × 72.03
  it("is 0.460 of that under a seat of 200 mm, and the same under next to none", () => {
    const rail = { element: "top side rail", railIMm4: 371_000, sheet, forceN: 20_000 } as const;
    expectWithin(localRailMoment({ ...rail, seatMm: 200 }).result.value, 331_600, 0.001);
    expectWithin(localRailMoment({ ...rail, seatMm: 0.1 }).result.value, localRailMoment(rail).result.value, 0.001);
  });

  it("never grows with the length of the seat", () => {
    const moments = [50, 100, 200, 300, 450, 800].map(
      (seatMm) =>
        localRailMoment({ element: "top side rail", railIMm4: 371_000, sheet, forceN: 1000, seatMm }).result.value,
    );
    expect(moments.toSorted((a, b) => b - a)).toEqual(moments);
  });

  it("20 kN on that rail of unproved steel uses 0.72/(0.9 × 235 × 12.4 cm³) = 0.275 of it", () => {
    const section = containerMembers["top side rail"];
    const strength = thinTubeFlexure(
      { section, steel: steels.unproved, unbracedMm: 0, cb: 1 },
      { edition: "2016", method: "LRFD" },
    );
    const check = railAtSeat({ element: "top side rail", railIMm4: section.ixMm4, sheet, forceN: 20_000 }, strength);
    expect(check.ok && Math.abs(check.utilisation - 0.275)).toBeLessThan(0.002);
  });
});

describe("sheetCrushing", () => {
  const pressed = {
    element: "side sheet",
    sheet: corrugatedSheet(folds.side, 1.6),
    steel: steels.unproved,
    railIMm4: 371_000,
    heightMm: 2350,
    bearingMm: 0.1,
    forceN: 20_000,
  } as const;

  it("20 kN on a top rail: ℓ 72.0 mm, p 139 N/mm, λ 0.868 and ρ 0.860, 0.403 + 0.649 of the sheet at the rail (by hand)", () => {
    // a 76.94: 4 × 180 762 × (1.6/76.94)² = 312.7; λ √(235/312.7) 0.867; ρ (1 − 0.2538)/0.867 = 0.861
    // n_e 0.861 × 1.703 × 235 = 344.6; m_e 0.861 × 19.07 × 235 = 3859; 138.8/344.6 = 0.403; 138.8 × 18/3859 = 0.647
    const check = sheetCrushing(pressed, "LRFD");
    if (!check.ok) throw new Error(check.why);
    expectWithin(step(check.working, "p"), 138.8, 0.002);
    expectWithin(step(check.working, "edge"), 0.403 + 0.647, 0.005);
    expectWithin(check.utilisation, 1.05 / 0.9, 0.006);
  });

  it("over 162 mm of a fitting the peak is 0.764 of it: x = 162/(2·72.0) = 1.125, (1 − e^−x cos x)/x (by hand)", () => {
    const peak = (bearingMm: number): number => {
      const check = sheetCrushing({ ...pressed, bearingMm }, "LRFD");
      return check.ok ? step(check.working, "p") : NaN;
    };
    // e^−1.125 0.3247, cos 1.125 0.4312: (1 − 0.1400)/1.125 = 0.7644
    expectWithin(peak(162) / peak(0.1), 0.7644, 0.002);
  });

  it("a stiffer rail spreads the force: never worse; more force: never better", () => {
    const use = (change: Partial<typeof pressed> | { railIMm4: number } | { forceN: number }) => {
      const check = sheetCrushing({ ...pressed, ...change }, "ASD");
      return check.ok ? check.utilisation : Number.NaN;
    };
    expect(use({ railIMm4: 3_478_000 })).toBeLessThan(use({}));
    expect(use({ forceN: 25_000 })).toBeGreaterThan(use({}));
  });

  it("the spread under a smooth half-plane, ∫ du/(u³ + 1) over π, is 0.385: the fitted 0.50 is above it", () => {
    let sum = 0;
    const steps = 200_000;
    for (let at = 0; at < steps; at += 1) {
      const x = (at + 0.5) / steps; // u = x/(1 − x)
      const u = x / (1 - x);
      sum += 1 / (u * u * u + 1) / ((1 - x) * (1 - x)) / steps;
    }
    expectWithin(sum / Math.PI, 0.385, 0.001);
  });
});
