import type { MemberName, Override, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { containerMembers, squareTube } from "../../src/catalog/sections/container-members.ts";
import { measuredPressed, measuredTube } from "../../src/catalog/sections/measured-section.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { oneRun, ownWeight, pressed, useOf } from "./one-run.ts";

const found = (member: MemberName, thicknessMm: number, more: Partial<Override> = {}): Override => ({
  ...{ id: `f-${member.replaceAll(" ", "-")}`, elementId: "u1", member, thicknessUm: thicknessMm * 1000 },
  source: "survey",
  ...more,
});
const withFound = (...overrides: Override[]): Scheme => ({ ...drawnUnit({ above: 1 }), overrides });
const worsts = (scheme: Scheme) => oneRun(scheme, [ownWeight(scheme, 41_202), pressed(scheme, 3400)]).worsts;
const notesOf = (scheme: Scheme) =>
  buildModel(analyse(scheme), [], {}).notes.flatMap((note) =>
    note.kind === "finding not taken" ? [note.elementId] : [],
  );

describe("a member with the thickness measured of it", () => {
  // Square tube with square corners: A = 60² − 54.8² = 596.96 mm²; I = (60⁴ − 54.8⁴)/12 = 328 479.2 mm⁴.
  it("is the tube of the same outside with that wall: by hand", () => {
    const rail = measuredTube(containerMembers["top side rail"], 2.6);
    expect(rail.areaMm2).toBeCloseTo(596.96, 6);
    expect(rail.ixMm4).toBeCloseTo(328_479.23, 1);
    expect(rail).toMatchObject({ ...squareTube("", 60, 2.6), name: rail.name, source: rail.source });
  });

  // Centreline of the channel 162 × 48 × 30 × 4.5: 45.75 + 157.5 + 27.75 = 231 mm long; at 4.0 mm 924 mm².
  it("is the pressed channel on the same centreline", () => {
    expect(measuredPressed(containerMembers["bottom side rail"], 4).areaMm2).toBeCloseTo(924, 6);
    expect(measuredPressed(containerMembers["bottom side rail"], undefined)).toBe(containerMembers["bottom side rail"]);
  });

  it("is used more where it is thinner, in its own unit", () => {
    const [assumed, thin] = [
      worsts(withFound()),
      worsts(withFound(found("top side rail", 2), found("bottom side rail", 3))),
    ];
    for (const rail of ["top side rail", "bottom side rail"])
      expect(useOf(thin, `u1 ${rail}`), rail).toBeGreaterThan(1.1 * useOf(assumed, `u1 ${rail}`));
    expect(Math.abs(useOf(thin, "u2 bottom side rail") / useOf(assumed, "u2 bottom side rail") - 1)).toBeLessThan(0.05);
  });

  it("gives the same answer where what is measured is what is assumed", () => {
    const same = worsts(withFound(found("top side rail", 3), found("bottom side rail", 4.5), found("cross member", 4)));
    const assumed = worsts(withFound());
    for (const part of ["u1 top side rail", "u1 bottom side rail", "u1 cross member", "u1 sill"])
      expect(useOf(same, part) / useOf(assumed, part), part).toBeCloseTo(1, 9);
  });
});

describe("a finding that the model does not take", () => {
  it("is said: a corner post, a proved yield, another section; and a measured rail is none", () => {
    expect(notesOf(withFound(found("top side rail", 2.6)))).toEqual([]);
    expect(notesOf(withFound(found("corner post", 5)))).toEqual(["f-corner-post"]);
    expect(notesOf(withFound(found("door sill", 4, { yieldMpa: 343 })))).toEqual(["f-door-sill"]);
    expect(notesOf(withFound(found("door header", 3, { section: "tube 60x60x3" })))).toEqual(["f-door-header"]);
  });
});
