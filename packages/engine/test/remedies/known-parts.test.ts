import { describe, expect, it } from "vitest";
import { KnownParts, usedOf } from "../../src/remedies/known-parts.ts";
import type { ElementResult } from "../../src/strength/element-result.ts";

const rail = (change: Partial<ElementResult>): ElementResult => ({
  id: "u1 bottom side rail left",
  ownerId: "u1",
  element: "bottom side rail",
  place: "left",
  limitState: "torsion with other forces",
  utilisation: 1.4,
  governingRun: "1.4D",
  assumptions: "locks at play",
  held: [],
  envelope: { "locks at play": 1.4 },
  covered: "bounded",
  ...change,
});
/** What is checked of it, told where it is too much. */
const sure = (utilisation: number) =>
  rail({
    id: "u1 bottom side rail left, by what is checked",
    sureOf: "u1 bottom side rail left",
    limitState: "axial force with bending",
    utilisation,
    covered: "checked",
  });
/** The same where it governs. */
const governed = (utilisation: number) =>
  rail({ limitState: "axial force with bending", utilisation, covered: "checked" });
const isWorse = (before: readonly ElementResult[], after: ElementResult) =>
  new KnownParts(before).isWorse(usedOf(after));

describe("a part before and after a change", () => {
  it("is worse where what is checked of it is now too much, though the bound that governs is exceeded no further", () => {
    expect(isWorse([rail({})], sure(1.2))).toBe(true);
    expect(isWorse([rail({})], rail({}))).toBe(false);
  });

  it("is not worse where it was as much too much before, told by itself or as what governs", () => {
    expect(isWorse([rail({}), sure(1.2)], sure(1.2))).toBe(false);
    expect(isWorse([governed(1.3)], sure(1.2))).toBe(false);
    expect(isWorse([governed(1.3)], sure(1.4))).toBe(true);
  });

  it("is worse by a limit state that governed no part before, where it was judged itself", () => {
    const shear = rail({ limitState: "shear", utilisation: 1.1, covered: "checked" });
    expect(isWorse([rail({ utilisation: 0.8 })], shear)).toBe(true);
    expect(isWorse([rail({ id: "u2 sill front", ownerId: "u2", element: "sill", place: "front" })], shear)).toBe(false);
  });
});
