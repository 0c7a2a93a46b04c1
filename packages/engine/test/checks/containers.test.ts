import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { simplifiedPath, type SingleUnitFacts } from "../../src/codes/containers/simplified-path.ts";
import { tableConditions, type WallFacts } from "../../src/codes/containers/table-conditions.ts";
import { tableWallShear } from "../../src/codes/containers/wall-shear-table.ts";
import { cornerFitting } from "../../src/checks/corner-fitting.ts";
import { cornerPost } from "../../src/checks/corner-post.ts";
import { doorPostAlone } from "../../src/checks/door-post-strength.ts";
import { frontPostAlone, frontPostHeld } from "../../src/checks/front-post.ts";
import { doorPostBounds, frontPostBounds } from "../../src/checks/post-bounds.ts";
import { isoProofLoad } from "../../src/checks/iso-proof-load.ts";
import { allowableLockForce, lock, lockSentence } from "../../src/checks/lock.ts";
import { soilBearing } from "../../src/checks/soil-bearing.ts";
import { presumptiveSoil } from "../../src/codes/loads/presumptive-soil.ts";
import { wallShear } from "../../src/checks/wall-shear.ts";
import type { Resistance } from "../../src/working/resistance.ts";
import { stated } from "../codes-steel/support/steel-answers.ts";

const expectWithin = (ours: number, hand: number, part: number) =>
  expect(Math.abs(ours / hand - 1), `ours ${ours}, reference ${hand}`).toBeLessThan(part);

describe("tableWallShear, IBC table from memory", () => {
  it.each([
    ["1EEE", 45, 75, 1.09],
    ["1AAA", 40, 84, 1.23],
    ["1BBB", 30, 112, 1.63],
    ["1CC", 20, 168, 2.45],
    ["1D", 10, 337, 4.92],
  ] as const)(
    "%s (%d ft) side: %d lb/ft is %d kN/m, the 75 kN of ISO 1496-1 over its length over 5",
    (type, feet, plf, kNPerM) => {
      const ours = tableWallShear({ type, wall: "side" }, "IBC 2021").result.value;
      expect(Math.abs(ours - kNPerM)).toBeLessThan(0.0051);
      // 75 kN = 16 861 lbf; the 20 ft row is cut off, not rounded
      expect(Math.abs(plf - 16_861 / feet / 5)).toBeLessThan(0.7);
    },
  );

  it("every end wall: 843 lb/ft, 12.30 kN/m, the 150 kN over 8 ft over 5", () => {
    for (const type of ["1EEE", "1AAA", "1CCC", "1D"] as const)
      expect(Math.abs(tableWallShear({ type, wall: "end" }, "IBC 2024").result.value - 12.3)).toBeLessThan(0.0051);
    expectWithin(843, 33_721 / 8 / 5, 1e-4);
  });

  it("a plate of 100 kN lowers the table by a third and the certainty to common practice; one above 150 kN does nothing", () => {
    const full = tableWallShear({ type: "1AAA", wall: "end" }, "IBC 2021");
    const low = tableWallShear({ type: "1AAA", wall: "end", plateRackingN: 100_000 }, "IBC 2021");
    expectWithin(low.result.value, (full.result.value * 2) / 3, 1e-9);
    expect(low.certainty).toBe("common practice");
    expect(tableWallShear({ type: "1AAA", wall: "end", plateRackingN: 200_000 }, "IBC 2021").result).toEqual(
      full.result,
    );
  });
});

const sound: WallFacts = {
  lengthMm: 12_192,
  openingsMm: 6096,
  piecesMm: [3048, 3048],
  boundaryOnFourSides: true,
  openingsFramed: true,
  smallHolesWithinLimit: true,
  kind: "sheet",
  doorsWeldedShut: "unknown",
};

describe("tableConditions", () => {
  const failing = (change: Partial<WallFacts>) =>
    tableConditions({ ...sound, ...change }, "IBC 2021")
      .filter(({ holds }) => !holds)
      .map(({ condition }) => condition);

  it("a sound wall meets all six", () => {
    expect(tableConditions(sound, "IBC 2021")).toHaveLength(6);
    expect(failing({})).toEqual([]);
  });

  it.each([
    [{ openingsMm: 6097 }, "openings at most half the wall"],
    [{ piecesMm: [3048, 1219] }, "counted pieces at least 4 ft"],
    [{ piecesMm: [] }, "counted pieces at least 4 ft"],
    [{ boundaryOnFourSides: false }, "boundary member on all four sides"],
    [{ boundaryOnFourSides: "unknown" }, "boundary member on all four sides"],
    [{ openingsFramed: "unknown" }, "openings framed in steel not less than was removed"],
    [{ smallHolesWithinLimit: false }, "one small hole at most in each 8 ft"],
    [{ kind: "door end" }, "end doors welded shut"],
  ] as const)("%o fails exactly: %s", (change, condition) => {
    expect(failing(change)).toEqual([condition]);
  });

  it("whole walls need no framing; doors welded shut count", () => {
    expect(failing({ openingsMm: 0, openingsFramed: "unknown" })).toEqual([]);
    expect(failing({ kind: "door end", doorsWeldedShut: true })).toEqual([]);
  });

  it("silence fails, and is told apart from a no", () => {
    const line = (fact: false | "unknown") =>
      tableConditions({ ...sound, boundaryOnFourSides: fact }, "IBC 2021").find(({ holds }) => !holds)?.stated;
    expect(line(false)).toBe(true);
    expect(line("unknown")).toBe(false);
  });
});

describe("simplifiedPath", () => {
  const one: SingleUnitFacts = {
    units: 1,
    onFoundation: true,
    touchesOrSupportsAnother: false,
    membersCut: false,
    level: true,
    floorAtBottom: true,
    seismicCategory: "D",
  };

  it.each([
    [{ units: 2 }],
    [{ onFoundation: false }],
    [{ touchesOrSupportsAnother: true }],
    [{ membersCut: true }],
    [{ level: false }],
    [{ floorAtBottom: false }],
    [{ seismicCategory: "E" }],
  ] as const)("%o closes it by one condition", (change) => {
    expect(simplifiedPath(one, "IBC 2021").every(({ holds }) => holds)).toBe(true);
    expect(simplifiedPath({ ...one, ...change }, "IBC 2021").filter(({ holds }) => !holds)).toHaveLength(1);
  });
});

describe("wallShear", () => {
  const strength = (value: number): Resistance => {
    const part = tableWallShear({ type: "1D", wall: "side" }, "IBC 2021");
    return { ok: true, nominal: value, available: value, working: { ...part, result: { ...part.result, value } } };
  };
  const wall = { table: { type: "1AAA", wall: "side" }, facts: sound, forceN: 5000, sheet: strength(30) } as const;

  it("5 kN over two pieces of 10 ft is 0.820 N/mm of 1.226: the table caps the sheet", () => {
    const { check, counts } = wallShear(wall, "IBC 2021");
    expect(counts).toBe(true);
    expectWithin(check?.ok === true ? check.utilisation : Number.NaN, 5000 / 6096 / (84 * 0.0145939), 1e-9);
  });

  it("a sheet weaker than the table is not raised to it", () => {
    const { check } = wallShear({ ...wall, sheet: strength(1) }, "IBC 2021");
    expectWithin(check?.ok === true ? check.utilisation : Number.NaN, 5000 / 6096, 1e-9);
  });

  it("an unframed opening takes the wall out, and there is no check to pass", () => {
    const finding = wallShear({ ...wall, facts: { ...sound, openingsFramed: false } }, "IBC 2021");
    expect(finding.counts).toBe(false);
    expect("check" in finding).toBe(false);
  });
});

describe("isoProofLoad, by arithmetic", () => {
  it.each([
    [192_000, 847.6],
    [213_360, 941.9],
    [50_800, 224.3],
  ])("a plate of %d kg at 1.8 g is %d kN on each of four posts", (allowableStackingKg, kN) => {
    expectWithin(isoProofLoad({ allowableStackingKg, edition: "1990" }).result.value / 1e3, kN, 3e-4);
  });

  it("without a plate it is 848 or 942 kN by the edition", () => {
    expect(isoProofLoad({ edition: "1990" }).result.value).toBe(848_000);
    expect(isoProofLoad({ edition: "2006 and later" }).result.value).toBe(942_000);
  });
});

describe("corner posts", () => {
  const basis = { edition: "2016", method: "LRFD" } as const;

  it("front post held by its sheet at 358 MPa squashes at 923 kN: the thesis of Oosthuysen reports 923 (published)", () => {
    const steel = { ...steels.weathering, fyMpa: 358 };
    const held = frontPostHeld({ steel, clearMm: 2350 }, basis);
    expectWithin(held.ok ? held.nominal / 1e3 : Number.NaN, 923, 0.002);
  });

  it("front post at 343 MPa squashes at 885 kN (by hand, 2580 mm²), just above the 848 kN of its test", () => {
    const held = frontPostHeld({ steel: steels.weathering, clearMm: 2350 }, basis);
    expectWithin(held.ok ? held.nominal / 1e3 : Number.NaN, 885, 0.001);
  });

  it("alone it is weaker than held, at any length", () => {
    for (const clearMm of [500, 1500, 2350, 2700]) {
      const alone = stated(frontPostAlone({ steel: steels.unproved, clearMm }, basis)).available;
      const held = stated(frontPostHeld({ steel: steels.unproved, clearMm }, basis)).available;
      expect(alone).toBeLessThan(held);
    }
  });

  it("the load's standing goes from within lower to between to beyond upper as it grows", () => {
    const bounds = frontPostBounds({ steel: steels.unproved, clearMm: 2350 }, basis);
    const [low, high] = [stated(bounds.lower.compression).available, stated(bounds.upper.compression).available];
    const standing = (axialN: number, mxNmm = 0, shearXN = 0) => {
      const proof = isoProofLoad({ edition: "1990" });
      const finding = cornerPost(
        "front corner post",
        { axialN, mxNmm, myNmm: 0, shearXN, shearYN: 0, torsionNmm: 0 },
        bounds,
        proof,
        basis,
      );
      return "standing" in finding ? finding.standing : finding.refused;
    };
    expect([0.99 * low, 1.01 * low, 0.99 * high, 1.01 * high].map((force) => standing(force))).toEqual([
      "within lower",
      "between",
      "between",
      "beyond upper",
    ]);
    expect(standing(0.99 * low, 1e6)).toBe("between");
    expect(standing(0, 1e8)).toBe("beyond upper");
    // 0.95 × 0.6 × 160 × 6 × 235 = 128.6 kN of shear across, in both bounds
    expect([128_000, 129_000].map((shear) => standing(0, 0, shear))).toEqual(["within lower", "beyond upper"]);
  });

  it("shear along one wall of a closed cell is not added to that along the other, torsion is to either", () => {
    const bounds = doorPostBounds({ steel: steels.unproved, clearMm: 2350 }, basis);
    const demand = { axialN: 0, mxNmm: 0, myNmm: 0, shearXN: 100_000, shearYN: 200_000, torsionNmm: 1e6 };
    const finding = cornerPost("door corner post", demand, bounds, isoProofLoad({ edition: "1990" }), basis);
    // by hand: 2 · 0.95 · 0.6 · 80 · 6 · 235 = 128.6 kN across, twice as much along, 0.9 · 0.6 · 235 · 2 · 80 · 160 · 6 = 19.49 kN·m
    const byHand = Math.max(100_000 / 128_592, 200_000 / 257_184) + 1e6 / 19_491_840;
    const use = "standing" in finding && finding.lower.ok ? finding.lower.utilisation : NaN;
    expect(use).toBeCloseTo(byHand, 6);
  });

  it("a bound in bending alone is below the one held, for both posts and both axes", () => {
    const post = { steel: steels.unproved, clearMm: 2350 };
    for (const { lower, upper } of [frontPostBounds(post, basis), doorPostBounds(post, basis)])
      for (const part of ["compression", "tension", "mx", "my", "shearX", "shearY", "torsion"] as const)
        expect(stated(lower[part]).available).toBeLessThanOrEqual(stated(upper[part]).available);
  });

  it("door post alone over 2350 mm: L/r 63.8, F_n 0.658^(235/485) × 235 = 192 MPa on 4230 mm²", () => {
    // r √(574e4/4230) 36.8; F_cre π² 200e3/63.8² = 485
    const alone = doorPostAlone({ steel: steels.unproved, clearMm: 2350 }, basis);
    expectWithin(alone.ok ? alone.nominal : Number.NaN, 4230 * 191.9, 0.005);
  });
});

describe("cornerFitting", () => {
  const stacking = isoProofLoad({ edition: "1990" });
  const use = (force: "compression" | "tension" | "shear", demand: number, method: "LRFD" | "ASD" = "LRFD") => {
    const check = cornerFitting(force, demand, stacking, method);
    return check.ok ? check.utilisation : Number.NaN;
  };

  it("bears 0.90 of its proof loads: 763 kN pressed, 135 kN pulled, 67.5 kN sideways; over 1.67 in ASD", () => {
    expect([use("compression", 763_200), use("tension", -135_000), use("shear", 67_500)]).toEqual([1, 1, 1]);
    expectWithin(use("tension", 90_000, "ASD"), (90 * 1.67) / 150, 1e-9);
  });

  it("2Rg/4 of a 30 480 kg container is the 150 kN of the lift (derived, 149.5)", () => {
    expectWithin((2 * 30_480 * 9.81) / 4 / 1e3, 150, 0.004);
  });
});

describe("lock", () => {
  it("a twistlock may pull 400/5 = 80 kN and shear 420/5 = 84 kN, and says what it is", () => {
    const pull = allowableLockForce("twistlock", "tension");
    expect(pull?.result.value).toBe(80_000);
    expect(allowableLockForce("twistlock", "shear")?.result.value).toBe(84_000);
    expect(pull?.notes).toContain(lockSentence);
    expect(pull?.certainty).toBe("common practice");
  });

  it("a check of a lock carries the sentence, whatever its result", () => {
    for (const demand of [1, 1e6]) {
      const check = lock("twistlock", "tension", demand);
      expect(check.ok && check.working.notes).toContain(lockSentence);
    }
  });

  it("a tested value takes the place of the rating; a bridge fitting has none in shear and is refused", () => {
    expect(
      allowableLockForce("twistlock", "tension", { breakingN: 600_000, source: "test report" })?.result.value,
    ).toBe(120_000);
    expect(lock("bridge fitting", "shear", 1).ok).toBe(false);
  });
});

describe("soilBearing", () => {
  const clay = presumptiveSoil("2021", "clay or silt");

  it("100 kN on a 1.2 m square pad is 69.4 kPa: 0.97 of clay's 71.8, and the class prints as assumed", () => {
    const ground = { kind: "presumed", soil: clay } as const;
    const check = soilBearing({ forceN: 100_000, lengthMm: 1200, widthMm: 1200, ground });
    if (!check.ok) throw new Error(check.why);
    expectWithin(check.utilisation, 69.444 / 71.82, 1e-4);
    expect(check.working.certainty).toBe("common practice");
    expect(check.working.notes[0]).toMatch(/assumed until a report/);
  });

  it("a report's value stands as published and needs no such note", () => {
    const ground = { kind: "report", bearingKpa: 200, source: "report" } as const;
    const check = soilBearing({ forceN: 1e5, lengthMm: 1000, widthMm: 1000, ground });
    expect(check.ok && check.utilisation).toBeCloseTo(0.5, 9);
    expect(check.ok && check.working.notes).toEqual([]);
  });
});
