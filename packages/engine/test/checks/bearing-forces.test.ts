import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { corrugatedSheet, folds } from "../../src/catalog/sections/corrugated-sheet.ts";
import { findSection } from "../../src/catalog/sections/find-section.ts";
import { sectionRows } from "../../src/catalog/sections/section-rows.ts";
import { codeBasis } from "../../src/checks/code-basis.ts";
import { coverageOf } from "../../src/checks/coverage.ts";
import type { Check } from "../../src/checks/check.ts";
import { forceOnBeam } from "../../src/checks/force-on-beam.ts";
import { seatOnPressedRail, seatOnTubeRail } from "../../src/checks/seat-on-rail.ts";
import { pressedFlexure } from "../../src/codes/cold-formed/pressed-flexure.ts";
import { thinTubeFlexure } from "../../src/codes/cold-formed/thin-tube.ts";

const basis = codeBasis("IBC 2021", "LRFD");
const steel = steels.unproved;
const sheet = corrugatedSheet(folds.side, 1.6);
const seat = { forceN: 20_000, bearingMm: 100, toEndMm: 3000 };
const states = (checks: readonly Check[]) => checks.map(({ limitState }) => limitState);
const expectCovered = (checks: readonly Check[]) => {
  for (const { limitState, element } of checks)
    expect(["checked", "bounded"], `${limitState}, ${element}`).toContain(coverageOf(limitState, element).coverage);
};

describe("a seat on a rail", () => {
  it("presses a bottom rail in crippling, in local bending and in both, each covered, the last at least 0.91/1.33 of the first", () => {
    const section = containerMembers["bottom side rail"];
    const bending = pressedFlexure({ section, steel, pressed: "head", unbracedMm: 0, cb: 1 }, basis.thin);
    const rail = { element: "bottom side rail", section, steel, sheet, where: "inside, one flange", bending } as const;
    const checks = seatOnPressedRail(rail, seat, basis);
    expect(states(checks)).toEqual(["web crippling", "local moment at a seat", "bending with web crippling"]);
    expectCovered(checks);
    const [crippling, , both] = checks.map((check) => (check.ok ? check.utilisation : Number.NaN));
    // P/P_n is φ 0.85 of the first; the sum is over 1.33 × 0.90
    expect(both ?? 0).toBeGreaterThan((0.91 * 0.85 * (crippling ?? 0)) / (1.33 * 0.9));
  });

  // AISI S100 F5.1 by hand, from memory: t 4.5, flat of the web 153, width 30 − 4.5 = 25.5, plate of 10, F_y 235.
  // A_c = 18 × 4.5² + 255 = 619.5 mm²: 145 583 N. b_1 = 112.5 × (0.0024 × 34 + 0.72) = 90.2, A_b = 660.8, r = √(13 818/660.8) = 4.573,
  // F_e = π² × 200 000/33.46² = 1763, F_n = 0.658^0.1333 × 235 = 222.3: 146 870 N. The less: × 0.85 = 123 750 N.
  it("is carried past the web of a bottom rail by a stiffener of 10 mm, 123.7 kN, which leaves the local moment", () => {
    const section = containerMembers["bottom side rail"];
    const bending = pressedFlexure({ section, steel, pressed: "head", unbracedMm: 0, cb: 1 }, basis.thin);
    const stiffener = { thicknessMm: 10, steel: steels.plate };
    const rail = { element: "bottom side rail", section, steel, sheet, where: "inside, one flange", bending } as const;
    const checks = seatOnPressedRail({ ...rail, stiffener }, seat, basis);
    expect(states(checks)).toEqual(["web crippling", "local moment at a seat"]);
    const [web] = checks;
    expect(web?.ok === true && 20_000 / web.utilisation / 1000).toBeCloseTo(123.75, 1);
  });

  it("presses a top rail's side walls and bends it, each covered", () => {
    const section = containerMembers["top side rail"];
    const bending = thinTubeFlexure({ section, steel, unbracedMm: 0, cb: 1 }, basis.thin);
    const rail = { element: "top side rail", section, steel, sheet, useOfFace: 0, bending } as const;
    const checks = seatOnTubeRail(rail, seat, basis);
    expect(states(checks)).toEqual(["side wall yielding", "side wall crippling", "local moment at a seat"]);
    expectCovered(checks);
  });
});

describe("forceOnBeam", () => {
  const section = findSection("W8x31");
  if (section?.kind !== "I") throw new Error("no section");
  const force = { section, steel: steels.wideFlange, bearingMm: 100, toEndMm: 1000, forceN: 1e5, bothFlanges: false };

  it("a push meets the web, a push on both flanges its buckling too, a pull the flange", () => {
    expect(states(forceOnBeam(force, basis.steel))).toEqual(["web yielding", "web crippling"]);
    expect(states(forceOnBeam({ ...force, bothFlanges: true }, basis.steel))).toEqual([
      "web yielding",
      "web crippling",
      "web buckling",
    ]);
    expect(states(forceOnBeam({ ...force, forceN: -1e5 }, basis.steel))).toEqual(["flange bending", "web yielding"]);
    expectCovered(forceOnBeam({ ...force, bothFlanges: true }, basis.steel));
  });
});

describe("sectionRows", () => {
  it("every row has a finite value and a source, and no row is given twice", () => {
    for (const { value, source } of sectionRows) {
      expect(Number.isFinite(value)).toBe(true);
      expect(source.length).toBeGreaterThan(0);
    }
    const names = sectionRows.map(({ key, property }) => `${key}|${property}`);
    expect(new Set(names).size).toBe(names.length);
  });
});
