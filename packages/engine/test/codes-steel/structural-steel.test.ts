import { describe, expect, it } from "vitest";
import { steels, type Steel } from "../../src/catalog/materials.ts";
import { squareTube } from "../../src/catalog/sections/container-members.ts";
import { findSection } from "../../src/catalog/sections/find-section.ts";
import type { Section } from "../../src/catalog/sections/section.ts";
import { concreteBearing, steelBearing } from "../../src/codes/steel/bearing.ts";
import { endPlateBending } from "../../src/codes/steel/base-plate.ts";
import { boltBearing } from "../../src/codes/steel/bolt.ts";
import { compression } from "../../src/codes/steel/compression.ts";
import { flangeBending, webBuckling } from "../../src/codes/steel/concentrated-force.ts";
import {
  blockShear,
  plateCompression,
  plateShearRupture,
  plateShearYielding,
} from "../../src/codes/steel/connecting-part.ts";
import { filletWeld, leastFilletLegMm, type FilletWeld } from "../../src/codes/steel/fillet-weld.ts";
import { strongFlexure, weakFlexure } from "../../src/codes/steel/flexure.ts";
import { axialWithBending } from "../../src/codes/steel/interaction.ts";
import { momentGradient } from "../../src/codes/steel/moment-gradient.ts";
import { shear } from "../../src/codes/steel/shear.ts";
import type { SteelBasis } from "../../src/codes/steel/steel-basis.ts";
import { tensionRupture, tensionYielding } from "../../src/codes/steel/tension.ts";
import { openTorsion, tubeTorsion } from "../../src/codes/steel/torsion.ts";
import { flangeShear } from "../../src/codes/steel/weak-shear.ts";
import {
  branchOnTube,
  platePlastification,
  sideWallCrippling,
  sideWallYielding,
} from "../../src/codes/steel/tube-wall.ts";
import { stated, step } from "./support/steel-answers.ts";

const lrfd: SteelBasis = { edition: "2016", method: "LRFD" };
const yields = (fyMpa: number, fuMpa = 400): Steel => ({ ...steels.plate, fyMpa, fuMpa });
const expectWithin = (ours: number, hand: number, part: number) =>
  expect(Math.abs(ours / hand - 1), `ours ${ours}, by hand ${hand}`).toBeLessThan(part);
const named = (name: string): Section => {
  const section = findSection(name);
  if (section === undefined) throw new Error(name);
  return section;
};
const iShape = (name: string) => {
  const section = named(name);
  if (section.kind !== "I") throw new Error(name);
  return section;
};

describe("compression, AISC 360 from memory, by hand", () => {
  const even = (mm: number) => ({ xMm: mm, yMm: mm, twistMm: mm });

  it("E7: tube 200×200×3, F_y 345, 1 m: λ 63.7 over 33.9, b_e 119.7 of 191, A_e 1509 of 2364 mm², P_n 514.6 kN", () => {
    const { working, available } = stated(
      compression({ section: squareTube("200", 200, 3), steel: yields(345), lengths: even(1000) }, lrfd),
    );
    expectWithin(step(working, "b_e1"), 119.72, 0.001);
    expectWithin(step(working, "A_e"), 1508.6, 0.001);
    expectWithin(available, 0.9 * 514_619, 0.001);
  });

  it("E4: C8x11.5, 2 m: x_0 1.269 in, r_0 3.412 in, F_ext 382.2 MPa, weak axis 123.6 MPa rules", () => {
    const { working } = stated(
      compression({ section: named("C8x11.5"), steel: yields(250), lengths: even(2000) }, lrfd),
    );
    expectWithin(step(working, "r_0"), 3.41203 * 25.4, 0.001);
    expectWithin(step(working, "F_ext"), 382.19, 0.001);
    expectWithin(step(working, "F_e"), 123.57, 0.001);
  });

  it("refuses an angle and a pressed section", () => {
    const angle = named("L3x3x1/4");
    expect(compression({ section: angle, steel: yields(250), lengths: even(1000) }, lrfd).ok).toBe(false);
  });
});

describe("flexure, AISC 360 from memory, by hand", () => {
  const beam = (section: Section, fy: number, unbracedMm = 0) => ({ section, steel: yields(fy), unbracedMm, cb: 1 });

  it("F3: W6x15, F_y 344.7: flange λ 11.52 between 9.15 and 24.1, M_n 57.43 kN·m", () => {
    expectWithin(stated(strongFlexure(beam(named("W6x15"), 344.7379), lrfd)).available, 0.9 * 57_434_584, 1e-4);
  });

  it("F6: W6x15, weak axis: flange not compact, M_n 24.53 of M_p 26.83 kN·m", () => {
    const { working, available } = stated(weakFlexure(beam(named("W6x15"), 344.7379), lrfd));
    expectWithin(step(working, "M_p"), 26_833_900, 1e-4);
    expectWithin(available, 0.9 * 24_531_704, 1e-4);
  });

  it("F7: a square tube of compact walls reaches F_y Z about both axes and does not twist", () => {
    const section = named("HSS4x4x1/4");
    const strong = stated(strongFlexure(beam(section, 345, 20_000), lrfd));
    expectWithin(strong.available, 0.9 * 345 * 4.69 * 25.4 ** 3, 1e-6);
    expectWithin(stated(weakFlexure(beam(section, 345), lrfd)).available, strong.available, 1e-9);
  });

  it("F7: HSS8x4x1/4 begins to twist at L_p = 0.13 E r_y √(J A)/M_p = 1.82 m", () => {
    // √(35.3 × 5.24) in³ = 13.60 in³ = 222 873 mm³; 0.13 × 200e3 × 42.16 × 222 873/(345 × 217 947) = 3249 mm
    const { working } = stated(strongFlexure(beam(named("HSS8x4x1/4"), 345, 5000), lrfd));
    expectWithin(step(working, "L_p"), (0.13 * 200e3 * 42.164 * 222_873) / (345 * 217_948), 0.001);
  });

  it("F7: thin flanges lose: tube 200×200×3 bends to less than first yield, and to more than half of it", () => {
    const section = squareTube("200", 200, 3);
    const { available } = stated(strongFlexure(beam(section, 345), lrfd));
    expect(available).toBeLessThan(0.9 * 345 * section.sxMm3);
    expect(available).toBeGreaterThan(0.45 * 345 * section.sxMm3);
  });

  it("refuses a pressed section", () => {
    expect(strongFlexure(beam(named("L4x4x3/8"), 250), lrfd)).toEqual({
      ok: false,
      why: "shape not covered by this check",
    });
  });

  it("C_b is 1 for even moment, 1.67 for a triangle, 1.14 for a simple beam under even load (AISC Manual, from memory)", () => {
    const cb = (atQuarter: number, atMiddle: number, atThreeQuarters: number) =>
      momentGradient({ largest: 1, atQuarter, atMiddle, atThreeQuarters }, lrfd).result.value;
    expectWithin(cb(1, 1, 1), 1, 1e-9);
    expectWithin(cb(0.75, 0.5, 0.25), 12.5 / 7.5, 1e-9);
    expectWithin(cb(0.75, 1, 0.75), 1.136, 0.001);
    expect(() => cb(2, 1, 1)).toThrow(RangeError);
  });
});

describe("shear", () => {
  it("G2.1(a): W8x31, F_y 345: 0.6 × 345 × 8.00 × 0.285 in² at φ 1.00", () => {
    expectWithin(
      stated(shear({ section: named("W8x31"), steel: yields(345) }, lrfd)).available,
      0.6 * 345 * 8 * 0.285 * 25.4 ** 2,
      1e-9,
    );
  });

  it("G2.1: a channel has φ 0.90", () => {
    expectWithin(
      stated(shear({ section: named("C8x11.5"), steel: yields(250) }, lrfd)).available,
      0.9 * 0.6 * 250 * 8 * 0.22 * 25.4 ** 2,
      1e-9,
    );
  });
});

describe("torsion and shear across", () => {
  it("H3: HSS4x4x1/4 has C 6.56 in³ (AISC Manual, from memory), T_n = 0.6 F_y C", () => {
    const section = named("HSS4x4x1/4");
    if (section.kind !== "tube") throw new Error("no tube");
    const { working, available } = stated(tubeTorsion({ section, steel: yields(345) }, lrfd));
    expectWithin(step(working, "C"), 6.56 * 25.4 ** 3, 0.001);
    expectWithin(available, 0.9 * 0.6 * 345 * 6.564 * 25.4 ** 3, 0.001);
  });

  it("H3.3 bounded: bottom rail 162, J 7020 mm⁴, t 4.5, F_y 235: 0.6 × 235 × 1560 = 220 N·m", () => {
    const shape = { name: "rail", jMm4: 7020, thickestMm: 4.5 };
    expectWithin(stated(openTorsion(shape, yields(235), lrfd)).available, 0.9 * 0.6 * 235 * 1560, 1e-9);
  });

  it("G6: two flanges of W8x31, F_y 345: 2 × 0.6 × 345 × 203.2 × 11.05, compact", () => {
    const flanges = { name: "W8x31", steel: yields(345), widthMm: 203.2, outstandMm: 101.6, thicknessMm: 11.05 };
    expectWithin(stated(flangeShear(flanges, lrfd)).available, 0.9 * 2 * 0.6 * 345 * 203.2 * 11.05, 1e-9);
    const thin = { ...flanges, outstandMm: 500 };
    expect(stated(flangeShear(thin, lrfd)).available).toBeLessThan(stated(flangeShear(flanges, lrfd)).available);
  });
});

describe("axialWithBending", () => {
  const section = named("HSS6x6x3/8");
  const lengths = { xMm: 3000, yMm: 3000, twistMm: 3000 };
  const available = {
    axial: stated(compression({ section, steel: yields(345), lengths }, lrfd)).working,
    mx: stated(strongFlexure({ section, steel: yields(345), unbracedMm: 3000, cb: 1 }, lrfd)).working,
    my: stated(weakFlexure({ section, steel: yields(345), unbracedMm: 3000, cb: 1 }, lrfd)).working,
  };
  const ratio = (axialN: number, mxNmm: number) =>
    axialWithBending({ axialN, mxNmm, myNmm: 0 }, available, lrfd).utilisation ?? Number.NaN;
  const { value: pc } = available.axial.result;
  const { value: mc } = available.mx.result;

  it("H1-1a and H1-1b meet at P_r = 0.2 P_c", () => {
    expectWithin(ratio(0.2 * pc, 0.9 * mc), ratio(0.2 * pc * 0.999_999, 0.9 * mc), 1e-5);
    expectWithin(ratio(0.2 * pc, 0.9 * mc), 1, 1e-9);
  });

  it("is P_r/P_c alone for a heavy axial force and half of it for a light one", () => {
    expectWithin(ratio(0.5 * pc, 0), 0.5, 1e-9);
    expectWithin(ratio(-0.1 * pc, 0), 0.05, 1e-9);
  });
});

describe("connections, AISC 360 from memory, by hand", () => {
  const weld: FilletWeld = {
    legMm: 6,
    lengthMm: 100,
    angleDegree: 0,
    electrodeMpa: 482.6,
    thinner: { thicknessMm: 10, steel: yields(250, 400) },
    endLoaded: false,
    tubeEnd: false,
  };

  it("J2.4: across, a fillet is 1.5 times as strong as along; on a tube's end it is not", () => {
    const along = stated(filletWeld(weld, lrfd)).available;
    expectWithin(along, 0.75 * 0.6 * 482.6 * 0.707 * 6 * 100, 1e-9);
    expectWithin(stated(filletWeld({ ...weld, angleDegree: 90 }, lrfd)).available, 1.5 * along, 1e-9);
    expectWithin(stated(filletWeld({ ...weld, angleDegree: 90, tubeEnd: true }, lrfd)).available, along, 1e-9);
  });

  it("J2.2b: beyond 300 legs an end-loaded weld is worth 180 legs", () => {
    const long = stated(filletWeld({ ...weld, lengthMm: 2400, endLoaded: true }, lrfd)).available;
    expectWithin(long, 0.75 * 0.6 * 482.6 * 0.707 * 6 * 180 * 6, 1e-9);
  });

  it("J4: a part too thin for its weld shears beside it, 0.6 F_u t L", () => {
    const thinner = { thicknessMm: 5, steel: yields(250, 400) };
    const strong = { ...weld, legMm: 12, thinner };
    expectWithin(stated(filletWeld(strong, lrfd)).available, 0.75 * 0.6 * 400 * 5 * 100, 1e-9);
  });

  it("J2: a leg under the least size is refused; the least is 3, 5, 6, 8 mm for thinner parts 6, 13, 19 and more", () => {
    expect(filletWeld({ ...weld, legMm: 4 }, lrfd)).toEqual({ ok: false, why: "weld smaller than the least size" });
    expect([6, 6.1, 13, 19, 25].map(leastFilletLegMm)).toEqual([3, 5, 5, 6, 8]);
  });

  it("J4: yielding 0.6 × 250 × 1000 at φ 1.00, rupture 0.6 × 400 × 900 at φ 0.75, block 500 kN at φ 0.75", () => {
    expectWithin(stated(plateShearYielding(yields(250), 1000, lrfd)).available, 150_000, 1e-9);
    expectWithin(stated(plateShearRupture(yields(250), 900, lrfd)).available, 162_000, 1e-9);
    const block = { grossShearMm2: 2000, netShearMm2: 1500, netTensionMm2: 500, evenTension: true };
    expectWithin(stated(blockShear(yields(250), block, lrfd)).available, 0.75 * 500_000, 1e-9);
  });

  it("J4.4: plate 100×10, K L 300: slenderness 103.9, P_n 141.0 kN; up to 25 it is the squash load", () => {
    const plate = { steel: yields(250), widthMm: 100, thicknessMm: 10, effectiveLengthMm: 300 };
    expectWithin(stated(plateCompression(plate, lrfd)).available, 0.9 * 141_027, 1e-4);
    expectWithin(stated(plateCompression({ ...plate, effectiveLengthMm: 72 }, lrfd)).available, 0.9 * 250_000, 1e-9);
  });

  it("D2: tension 250 × 1000 at φ 0.90, rupture 400 × 800 at φ 0.75", () => {
    const part = { steel: yields(250), grossMm2: 1000, effectiveNetMm2: 800 };
    expectWithin(stated(tensionYielding(part, lrfd)).available, 225_000, 1e-9);
    expectWithin(stated(tensionRupture(part, lrfd)).available, 240_000, 1e-9);
  });

  it("J3: bearing 2.4 × 20 × 10 × 400 = 192 kN or tear-out 1.2 × 30 × 10 × 400 = 144 kN", () => {
    const hole = { steel: yields(250), diameterMm: 20, thicknessMm: 10, clearMm: 30 };
    expectWithin(stated(boltBearing(hole, lrfd)).available, 0.75 * 144_000, 1e-9);
    expectWithin(stated(boltBearing({ ...hole, clearMm: 60 }, lrfd)).available, 0.75 * 192_000, 1e-9);
  });

  it("J7: 1.8 × 250 × 1000 = 450 kN", () => {
    expectWithin(stated(steelBearing(yields(250), 1000, lrfd)).available, 0.75 * 450_000, 1e-9);
  });

  it("J8: 200 on 400 square, f'c 25: 0.85 × 25 × 40 000 × 2 is at the cap 1.7 f'c A_1 = 1700 kN, φ 0.65", () => {
    const bearing = { loadedMm2: 40_000, supportMm2: 160_000, concreteMpa: 25 };
    expectWithin(stated(concreteBearing(bearing, lrfd)).available, 1_105_000, 1e-9);
    expectWithin(stated(concreteBearing({ ...bearing, supportMm2: 360_000 }, lrfd)).available, 1_105_000, 1e-9);
    expect(concreteBearing({ ...bearing, supportMm2: 39_999 }, lrfd).ok).toBe(false);
  });

  it("F11: plate 250×250×20 under HSS4x4, F_y 248.2: m 76.7, P_n 526.8 kN", () => {
    const column = named("HSS4x4x1/4");
    if (column.kind !== "tube") throw new Error("no tube");
    const plate = { column, steel: yields(248.2), lengthMm: 250, widthMm: 250, thicknessMm: 20 };
    expectWithin(stated(endPlateBending(plate, lrfd)).available, 0.9 * 526_827, 1e-4);
  });

  it("J10.1 and J10.5: W8x31, F_y 345: 6.25 × 345 × 11.05², half at the end; 24 × 7.24³ √(E F_y)/161.1", () => {
    const force = { section: iShape("W8x31"), steel: yields(345), bearingMm: 100, toEndMm: 500 };
    expectWithin(stated(flangeBending(force, lrfd)).available, 0.9 * 6.25 * 345 * 11.049 ** 2, 1e-9);
    expectWithin(
      stated(flangeBending({ ...force, toEndMm: 50 }, lrfd)).available,
      0.45 * 6.25 * 345 * 11.049 ** 2,
      1e-9,
    );
    expectWithin(
      stated(webBuckling(force, lrfd)).available,
      (0.9 * 24 * 7.239 ** 3 * Math.sqrt(200e3 * 345)) / (6.342 * 25.4),
      1e-6,
    );
  });

  it("K: a wide branch is refused; a plate across no width gives F_y t² (2 l/B + 4)", () => {
    const section = named("HSS8x8x3/8");
    if (section.kind !== "tube") throw new Error("no tube");
    const chord = { section, steel: yields(345), useOfFace: 0 };
    expect(branchOnTube(chord, { widthMm: 190, alongChordMm: 100 }, lrfd).ok).toBe(false);
    const t = 0.349 * 25.4;
    const hand = ((345 * t * t) / (1 - 10 / 203.2)) * (200 / 203.2 + 4 * Math.sqrt(1 - 10 / 203.2));
    expectWithin(
      stated(platePlastification(chord, { thicknessMm: 10, alongChordMm: 100 }, lrfd)).available,
      hand,
      1e-9,
    );
  });

  it("J10 for tubes: two walls of 60×60×3, l_b 50: yielding 2 × 235 × 3 × (5 × 4.5 + 50) = 102.2 kN, less at the end", () => {
    const chord = { section: squareTube("rail", 60, 3), steel: yields(235), useOfFace: 0 };
    expectWithin(stated(sideWallYielding(chord, { bearingMm: 50, toEndMm: 500 }, lrfd)).available, 102_225, 1e-9);
    const inside = stated(sideWallCrippling(chord, { bearingMm: 50, toEndMm: 500 }, lrfd)).available;
    // 1.6 × 9 × (1 + 150/51) × √(200e3 × 235) = 389.1 kN
    expectWithin(inside, 0.75 * 1.6 * 9 * (1 + 150 / 51) * 6855.65, 1e-4);
    expectWithin(stated(sideWallCrippling(chord, { bearingMm: 50, toEndMm: 10 }, lrfd)).available, inside / 2, 1e-9);
    const pressed = stated(sideWallCrippling({ ...chord, useOfFace: 1 }, { bearingMm: 50, toEndMm: 500 }, lrfd));
    expectWithin(pressed.available, 0.9 * inside, 1e-9);
  });
});
