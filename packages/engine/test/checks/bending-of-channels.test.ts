import { describe, expect, it } from "vitest";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { steels } from "../../src/catalog/materials.ts";
import { basis } from "../strength/one-run.ts";

// First yield of the whole section, 235 MPa, by hand from plates with square corners: 162×48×30×4.5 I 3.481e6 mm⁴ over 87.14 mm;
// 158×48×30×4.5 3.270e6 over 85.09, and across its web 136.5e3 over 39.47 mm; 122×45×40×4 1.676e6 over 62.48 mm.
const whole = [
  ["bottom side rail", "headPressed", (235 * 3.481e6) / 87.14],
  ["bottom side rail, 20 ft", "headPressed", (235 * 3.27e6) / 85.09],
  ["bottom side rail, 20 ft", "footPressed", (235 * 3.27e6) / 85.09],
  ["bottom side rail, 20 ft", "weak", (235 * 136.5e3) / 39.47],
  ["cross member", "headPressed", (235 * 1.676e6) / 62.48],
] as const;

// Bending of channels is bounded on the harsh side, and enters axial force with bending, which counts as checked. It may: where cross
// members and boards hold them every flange is pressed to its yield, and what is bounded is no less than first yield.
describe("bending of the channels of a container, held 308 mm apart", () => {
  it.each(whole)("%s, %s: its bound is first yield of the whole section within 1 %", (name, way, yieldNmm) => {
    const lengths = { strongMm: 308, weakMm: 308, twistMm: 308 };
    const element = name === "cross member" ? "cross member" : "bottom side rail";
    const strengths = basis.factored.memberStrengths({
      ...{ element, section: containerMembers[name], steel: steels.unproved },
      ...{ lengths, unbracedMm: 308, cb: 1 },
    });
    const strength = strengths[way];
    if (!strength.ok) throw new Error(strength.why);
    expect(strength.nominal / yieldNmm).toBeGreaterThan(0.99);
    expect(strength.nominal / yieldNmm).toBeLessThan(1.01);
  });
});
