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
