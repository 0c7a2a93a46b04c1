import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { boltsToWebMm, framedBolts, seatedBolts } from "../../src/checks/stated-bolts.ts";
import { boltTensionBesideShear } from "../../src/codes/steel/bolt-together.ts";

const kip = 4448.222;
const bolt = { grade: "A325-N", diameterMm: 19.05 } as const;

/**
 * AISC Design Examples J.3, from memory: a ¾ in A325-N bolt, 3.5 + 12 kips of pull and 1.33 + 4 kips of shear. Printed:
 * LRFD 25.4 kips beside 8.00 of shear, ASD 16.9 beside 5.33.
 */
describe("a bolt in tension beside shear (J3.7)", () => {
  it("takes what the design example prints", () => {
    const lrfd = boltTensionBesideShear(bolt, 8 * kip, { edition: "2016", method: "LRFD" });
    const asd = boltTensionBesideShear(bolt, 5.33 * kip, { edition: "2016", method: "ASD" });
    if (!lrfd.ok || !asd.ok) throw new Error("both are stated");
    expect(lrfd.available / kip).toBeCloseTo(25.4, 1);
    expect(Math.abs(asd.available / kip - 16.9)).toBeLessThan(0.1);
  });

  it("takes its whole tension where shear is little: 29.8 kips", () => {
    const little = boltTensionBesideShear(bolt, 1000, { edition: "2016", method: "LRFD" });
    expect(little.ok && little.available / kip).toBeCloseTo(29.8, 1);
  });
});

/** By hand, LRFD: φ r_n of ¾ in A325-N in shear 17.9 kips; holes in 10 mm of A36, 38 mm to the edge: l_c = 38 − 20.65/2 = 27.675 mm. */
describe("the stated joints of added steel", () => {
  const basis = checkBasisOf("IBC 2021", "LRFD");
  const thick = { thicknessMm: 20, steel: steels.wideFlange, toWebMm: 41.4 };
  const worst = (checks: ReturnType<typeof seatedBolts>, limitState: string): number =>
    Math.max(...checks.map((check) => (check.ok && check.limitState === limitState ? check.utilisation : 0)));

  it("share a shear among four bolts where seated", () => {
    const clear = 38 - 20.65 / 2;
    const tear = 0.75 * Math.min(1.2 * clear * 10 * steels.plate.fuMpa, 2.4 * 19.05 * 10 * steels.plate.fuMpa);
    const perBolt = Math.min(17.9 * kip, tear);
    expect(worst(seatedBolts({ pullN: 0, shearN: 40_000 }, thick, basis), "bolt")).toBeCloseTo(10_000 / perBolt, 3);
  });

  it("shear the plate of a framed end: 1.0 · 0.6 F_y · 2280 mm² gross, and its weld of 2 × 228 × 6", () => {
    const checks = framedBolts(100_000, thick, basis);
    const rupture = 0.75 * 0.6 * steels.plate.fuMpa * (2280 - 3 * 22.25 * 10);
    const yielding = 0.6 * steels.plate.fyMpa * 2280;
    expect(worst(checks, "shear")).toBeCloseTo(100_000 / Math.min(rupture, yielding), 6);
    const weld = 0.75 * Math.min(0.6 * 482.6 * 0.707 * 6 * 456, 0.6 * steels.plate.fuMpa * 10 * 456);
    expect(worst(checks, "weld")).toBeCloseTo(100_000 / weld, 6);
  });

  it("tear a thin web first", () => {
    const thin = { thicknessMm: 5.8, steel: steels.wideFlange, toWebMm: 41.4 };
    const tear = 0.75 * 1.2 * (38 - 20.65 / 2) * 5.8 * steels.wideFlange.fuMpa;
    expect(worst(framedBolts(90_000, thin, basis), "bolt")).toBeCloseTo(30_000 / Math.min(tear, 17.9 * kip), 3);
  });

  // AISC Manual Part 9, from memory: T = 0.9 p F_u t²/(4 b′), b′ = 41.4 − 19.05/2, p = 76: 21.45 kN of one bolt in 10 mm of A36
  it("pull no harder than a plate of 10 mm takes without prying", () => {
    const one = (0.9 * 76 * steels.plate.fuMpa * 100) / (4 * (41.4 - 19.05 / 2));
    expect(one).toBeCloseTo(21_458, -1);
    expect(worst(seatedBolts({ pullN: 4 * one, shearN: 0 }, thick, basis), "bolt")).toBeCloseTo(1, 9);
  });

  it("stand as near to the web as the flange lets them, but a wrench away", () => {
    // W8x24: flange 165.1, web 6.2: (165.1 − 6.2)/2 − 38 = 41.45; a channel of 49 has no room for that
    expect(boltsToWebMm((165.1 - 6.2) / 2)).toBeCloseTo(41.45, 9);
    expect(boltsToWebMm(49 - 5)).toBe(31.75);
  });
});
