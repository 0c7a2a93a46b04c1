import { describe, expect, it } from "vitest";
import { steels, type Steel } from "../../src/catalog/materials.ts";
import {
  containerMembers,
  doorHeader,
  pressedChannel,
  squareTube,
} from "../../src/catalog/sections/container-members.ts";
import { openSection } from "../../src/catalog/sections/open-section.ts";
import type { ColdFormedBasis } from "../../src/codes/cold-formed/cold-formed-basis.ts";
import { effectiveShare, effectiveWeb, plateBucklingMpa } from "../../src/codes/cold-formed/effective-width.ts";
import { elasticColumn } from "../../src/codes/cold-formed/elastic-column.ts";
import { pressedCompression } from "../../src/codes/cold-formed/pressed-compression.ts";
import { pressedFlexure } from "../../src/codes/cold-formed/pressed-flexure.ts";
import { pressedShear } from "../../src/codes/cold-formed/pressed-shear.ts";
import { thinFilletWeld } from "../../src/codes/cold-formed/thin-weld.ts";
import { thinTubeCompression, thinTubeFlexure } from "../../src/codes/cold-formed/thin-tube.ts";
import { pressedWebCrippling } from "../../src/codes/cold-formed/web-crippling.ts";
import { stated, step } from "./support/steel-answers.ts";

const lrfd: ColdFormedBasis = { edition: "2016", method: "LRFD" };
const yields = (fyMpa: number): Steel => ({ ...steels.unproved, fyMpa });
const expectWithin = (ours: number, hand: number, part: number) =>
  expect(Math.abs(ours / hand - 1), `ours ${ours}, by hand ${hand}`).toBeLessThan(part);

/** Outside 102 × 51: centrelines 100 × 50, t 2. */
const small = pressedChannel("C", { depthMm: 102, headMm: 51, footMm: 51, thicknessMm: 2 });

describe("effective width, AISI S100 Appendix 1 from memory, by hand", () => {
  it("a plate with k 4 and w/t 60 buckles at 4 × 180 762/3600 = 200.8 MPa", () => {
    expectWithin(plateBucklingMpa(4, 60, 1), 200.847, 1e-4);
  });

  it("at 345 MPa λ = √(345/200.8) = 1.3106 and (1 − 0.22/λ)/λ = 0.6349 of it works", () => {
    expectWithin(effectiveShare(4, 60, 1, 345), 0.6349, 1e-4);
  });

  it("all of it works up to λ = 0.673, where the formula gives 1 to three figures", () => {
    const stress = 0.673 ** 2 * plateBucklingMpa(4, 60, 1);
    expect(effectiveShare(4, 60, 1, stress * 0.999)).toBe(1);
    expectWithin(effectiveShare(4, 60, 1, stress * 1.001), 1, 1e-3);
  });

  it("pure bending gives k 24 (exact theory 23.9) with a quarter at the edge and half at the axis", () => {
    const web = effectiveWeb(100, 10, { pressedMpa: 200, farMpa: -200 });
    expect(web).toEqual({ psi: 1, k: 24, share: 1, atEdgeMm: 25, atAxisMm: 50 });
  });
});

describe("elasticColumn", () => {
  const thousand = { strongMm: 1000, weakMm: 1000, twistMm: 1000 };

  it("channel 100×50×2, 1 m: σ_x 3290, σ_y 514.0, σ_t 345.3, together 332.7 MPa (closed forms of a channel, by hand)", () => {
    const column = elasticColumn(small, thousand);
    expectWithin(column.strongMpa, 3289.87, 0.002);
    expectWithin(column.weakMpa, 514.04, 0.002);
    expectWithin(column.twistMpa, 345.26, 0.002);
    expectWithin(column.leastMpa, 332.67, 0.002);
  });

  it("a Z has its shear centre at its centroid, so the least of the three stresses stands", () => {
    const z = openSection(
      [
        { xMm: -50, yMm: 0 },
        { xMm: 0, yMm: 0 },
        { xMm: 0, yMm: 100 },
        { xMm: 50, yMm: 100 },
      ],
      2,
    );
    const column = elasticColumn(z, thousand);
    expectWithin(column.leastMpa, Math.min(column.strongMpa, column.weakMpa, column.twistMpa), 1e-9);
  });

  it("turning or mirroring the outline changes nothing", () => {
    const post = containerMembers["front corner post"];
    const lengths = { strongMm: 2350, weakMm: 2350, twistMm: 2350 };
    const upright = elasticColumn(post, lengths);
    for (const turn of [
      ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: -yMm, yMm: xMm }),
      ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: -xMm, yMm }),
      ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: 0.6 * xMm - 0.8 * yMm, yMm: 0.8 * xMm + 0.6 * yMm }),
    ]) {
      const turned = elasticColumn(openSection(post.outline.map(turn), post.thicknessMm), lengths);
      expectWithin(turned.leastMpa, upright.leastMpa, 1e-9);
      expectWithin(turned.twistMpa, upright.twistMpa, 1e-9);
    }
  });
});

describe("pressedCompression", () => {
  it("channel 100×50×2, 1 m, F_y 235: F_n 174.8 MPa, A_e 327.7 mm², P_n 57.3 kN (by hand)", () => {
    // λ_c √(235/332.7) 0.840; F_n 0.658^0.706 × 235; web λ 0.762 ρ 0.933; flanges λ 1.162 ρ 0.698.
    const result = stated(
      pressedCompression(
        { section: small, steel: yields(235), lengths: { strongMm: 1000, weakMm: 1000, twistMm: 1000 } },
        lrfd,
      ),
    );
    expectWithin(step(result.working, "F_n"), 174.85, 0.002);
    expectWithin(step(result.working, "A_e"), 327.7, 0.002);
    expectWithin(result.available, 0.85 * 57_297, 0.003);
  });

  it("its stress solves the flexural-torsional equation to 1e-9", () => {
    const section = containerMembers["bottom side rail"];
    const { working } = stated(
      pressedCompression({ section, steel: yields(235), lengths: { strongMm: 5853, weakMm: 300, twistMm: 300 } }, lrfd),
    );
    expect(Math.abs(step(working, "rest"))).toBeLessThan(1e-9);
  });

  it("refuses a lipped outline", () => {
    const section = containerMembers["front corner post"];
    const lengths = { strongMm: 1, weakMm: 1, twistMm: 1 };
    expect(pressedCompression({ section, steel: yields(235), lengths }, lrfd)).toEqual({
      ok: false,
      why: "shape not covered by this check",
    });
  });
});

describe("pressedFlexure", () => {
  const beam = (
    name: "bottom side rail, 20 ft" | "cross member at a board joint",
    fy: number,
    pressed: "head" | "foot",
    lb = 0,
  ) =>
    stated(
      pressedFlexure({ section: containerMembers[name], steel: yields(fy), pressed, unbracedMm: lb, cb: 1 }, lrfd),
    );

  it("bottom rail 158, F_y 235, held: whole section yields, 38.40 cm³ × 235 = 9.024 kN·m either way up", () => {
    for (const pressed of ["head", "foot"] as const)
      expectWithin(beam("bottom side rail, 20 ft", 235, pressed).available, 0.9 * 38_400 * 235, 0.001);
  });

  it("cross member 122×75×40×4, F_y 343, wide flange pressed: ρ 0.690, M_n 9.414 kN·m (by hand)", () => {
    // flange λ √(343/246.7) 1.179, ρ 0.690, 50.98 of 73 left; A 827.9; axis 57.3 below the top; I 177.58 cm⁴;
    // the far face, 64.7 away, yields first: 177.58/6.47 × 343.
    const { available } = beam("cross member at a board joint", 343, "head");
    expectWithin(available, 0.9 * 9_414_074, 0.003);
  });

  it("cross member 122×75×40×4 with the narrow flange pressed works whole: 28.8 cm³ × 343 (flange λ 0.598)", () => {
    const { available } = beam("cross member at a board joint", 343, "foot");
    expectWithin(available, 0.9 * 28_800 * 343, 0.003);
  });

  it("a longer unheld length never strengthens a beam, and 1.5 m is where the bottom rail has begun to lose", () => {
    const strengths = [0, 300, 600, 1000, 1500, 2500, 4000].map(
      (lb) => beam("bottom side rail, 20 ft", 235, "foot", lb).available,
    );
    for (const [at, value] of strengths.entries()) expect(value).toBeLessThanOrEqual(strengths[at - 1] ?? Infinity);
    expect(strengths[4] ?? 0).toBeLessThan(strengths[0] ?? 0);
  });
});

describe("pressedShear", () => {
  it("bottom rail 158: stocky web, 0.6 × 149 × 4.5 × 235 = 94.5 kN", () => {
    // λ_v √(141/880) 0.40 ≤ 0.815
    const result = stated(
      pressedShear({ section: containerMembers["bottom side rail, 20 ft"], steel: yields(235) }, lrfd),
    );
    expectWithin(result.available, 0.95 * 0.6 * 149 * 4.5 * 235, 1e-9);
  });

  it("web 200 × 1: V_cr = 5.34 × 180 762/198² × 198 = 4.875 kN rules (by hand)", () => {
    const thin = pressedChannel("thin", { depthMm: 200, headMm: 40, footMm: 40, thicknessMm: 1 });
    expectWithin(stated(pressedShear({ section: thin, steel: yields(235) }, lrfd)).available, 0.95 * 4875.1, 1e-4);
  });
});

describe("pressedWebCrippling", () => {
  const force = {
    section: containerMembers["bottom side rail, 20 ft"],
    steel: yields(235),
    where: "inside, one flange",
    bearingMm: 100,
    insideRadiusMm: 4.5,
  } as const;

  it("bottom rail 158 on 100 mm inside: 13 × 4.5² × 235 × 0.68 × 1.4714 × 0.9425 = 58.34 kN (by hand)", () => {
    expectWithin(stated(pressedWebCrippling(force, lrfd)).available, 0.85 * 58_336, 1e-4);
  });

  it("counts no more of a bearing than 2 h = 298 mm, 71.9 kN (by hand): what bears over more is no weaker", () => {
    for (const bearingMm of [298, 300, 450])
      expectWithin(stated(pressedWebCrippling({ ...force, bearingMm }, lrfd)).available, 0.85 * 71_911, 1e-3);
  });

  it("refuses a bend rounder than the table's tests", () => {
    expect(pressedWebCrippling({ ...force, insideRadiusMm: 6 }, lrfd)).toEqual({
      ok: false,
      why: "proportions outside the clause's limits",
    });
  });
});

describe("thinTube", () => {
  const rail = { section: squareTube("rail", 60, 3), steel: yields(235) };

  it("top rail 60×60×3 bends to first yield over any length up to 10 m: L_u is 0.36π/(F_y S) √(E G J I) = 20 m", () => {
    // √(200e3 × 77.2e3 × 55.9e4 × 37.2e4) = 5.666e10; over 235 × 12 400 = 2.914e6; × 1.131 = 22.0e3
    const { available, working } = stated(thinTubeFlexure({ ...rail, unbracedMm: 10_000, cb: 1 }, lrfd));
    expectWithin(available, 0.9 * 235 * 12_400, 0.004);
    expectWithin(step(working, "L_u"), 22_000, 0.01);
  });

  it("top rail over 1 m: F_cre π²E/(1000/23.3)² = 1072 MPa, F_n 0.658^0.219 × 235 = 214 MPa, × 684 mm² = 146.6 kN", () => {
    const result = stated(thinTubeCompression({ ...rail, lengthXMm: 1000, lengthYMm: 1000 }, lrfd));
    expectWithin(result.available, 0.85 * 146_600, 0.003);
  });
});

describe("thinTubeFlexure of a door header", () => {
  it("box 245×100×3, F_y 235: its pressed wall works whole; at F_y 450 it loses 22.8 mm² and the axis moves 1.37 mm (by hand)", () => {
    // wall 94: λ = √(235/(4 × 180 762 × (3/94)²)) = √(235/736.5) = 0.565 ≤ 0.673: whole at 235
    // webs: ψ 0.977, k 23.4, λ 0.822, ρ 0.891: b_1 + b_2 = 213 × 0.751 = 160 of 121 pressed, whole
    // at 450 MPa: λ 0.7817, ρ (1 − 0.2814)/0.7817 = 0.9193, lost 0.0807 × 94 × 3 = 22.8 mm²
    // A 2034, y_0 = 22.8 × 121/2011 = 1.37; S_f d/2 = I
    const header = (fy: number) =>
      stated(thinTubeFlexure({ section: doorHeader(245, 100), steel: yields(fy), unbracedMm: 0, cb: 1 }, lrfd));
    const { sxMm3 } = doorHeader(245, 100);
    expectWithin(header(235).available, 0.9 * sxMm3 * 235, 1e-9);
    const { working } = header(450);
    expectWithin(step(working, "A_b"), 22.8, 0.003);
    expectWithin(step(working, "y_0"), 1.372, 0.003);
    const i = (sxMm3 * 245) / 2 - 22.76 * 121 * 121 - 2011 * 1.372 * 1.372;
    expectWithin(step(working, "S_e"), i / (122.5 + 1.372), 0.001);
  });
});

describe("thinFilletWeld", () => {
  const weld = {
    lengthMm: 100,
    legMm: 3,
    electrodeMpa: 482.6,
    thinner: { thicknessMm: 3, steel: { ...steels.unproved, fuMpa: 360 } },
  };

  it("along, L/t 33: the throat 0.75 × 0.707 × 3 × 100 × 482.6 × 0.60 = 46.1 kN or the sheet 0.75 × 3 × 100 × 360 × 0.50 = 40.5 kN", () => {
    expectWithin(stated(thinFilletWeld({ ...weld, force: "along" }, lrfd)).available, 40_500, 1e-4);
  });

  it("across: the sheet 3 × 100 × 360 × 0.65 = 70.2 kN loses to the throat, 46.06 kN", () => {
    expectWithin(
      stated(thinFilletWeld({ ...weld, force: "across" }, lrfd)).available,
      0.6 * 0.75 * 0.707 * 300 * 482.6,
      1e-9,
    );
  });

  it("throws for a part thicker than 4.76 mm", () => {
    const thinner = { thicknessMm: 6, steel: steels.unproved };
    expect(() => thinFilletWeld({ ...weld, thinner, force: "along" }, lrfd)).toThrow(RangeError);
  });
});
