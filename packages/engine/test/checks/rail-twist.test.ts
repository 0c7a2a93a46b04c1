import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { greatestSectorialMm2 } from "../../src/catalog/sections/open-section.ts";
import { codeBasis } from "../../src/checks/code-basis.ts";
import { coverageOf } from "../../src/checks/coverage.ts";
import { holdingEnd } from "../../src/checks/holding-end.ts";
import type { MemberDemand } from "../../src/checks/member-demand.ts";
import { warpedRail, warpedUse, type TwistedRail } from "../../src/checks/rail-twist.ts";

const basis = codeBasis("IBC 2021", "LRFD");
const steel = steels.unproved;
const section = containerMembers["bottom side rail"];
/** A seat of 150 mm midway between two cross members 308 mm apart. */
const midway: TwistedRail = { section, nearMm: 79, farMm: 79, lineMm: 90, baseMm: 12.5 };
const demand = (more: Partial<MemberDemand>): MemberDemand => ({
  ...{ axialN: 0, shearStrongN: 0, shearWeakN: 0, momentStrongNmm: 0, momentWeakNmm: 0, torsionNmm: 0 },
  ...more,
});

// Channel 162 × 48 × 30 × 4.5 by hand, centrelines 157.5, 45.75 and 27.75, A 1039.5: centroid 6.20 from the web and 84.89 above the
// foot; shear centre 8.75 behind the web and 120.2 above the foot; sectorial coordinates about it, less their mean: 2561 at the tip of the foot,
// −774 and 604 at the corners, −1102 at the tip of the head; C_w = ∫ω² dA = 3.956e8 mm⁶ (Vlasov; as for any channel).
describe("a bottom rail that a seat twists", () => {
  it("is stressed most by warping at the tip of its foot, ω 2561 mm²", () => {
    expect(greatestSectorialMm2(section.outline, section.thicknessMm) / 2561).toBeCloseTo(1, 2);
    expect(section.cwMm6 / 3.956e8).toBeCloseTo(1, 2);
  });

  // T 0.72 kN·m about the line (8 kN × 90 mm) is 8 kN × (12.5 + 2.25 + 120.2 = 134.9 mm) = 1.079 kN·m about the shear centre;
  // half to either side, B = 0.5397e6 × 79 = 4.264e7 N·mm²; 4.264e7 × 2561/3.956e8 = 276.0 MPa over 0.9 × 235 = 211.5: 1.305.
  it("by 8 kN across, midway, is used 1.305 of by warping alone", () => {
    const check = warpedRail(midway, steel, demand({ torsionNmm: 0.72e6 }), basis);
    expect(Math.abs((check.ok ? check.utilisation : NaN) / 1.305 - 1)).toBeLessThan(0.01);
  });

  // 50 000/1039.5 = 48.1, 3.0e6/39 911 = 75.2, 0.3e6/3463 = 86.6 MPa
  it("has bending and axial force added to that: 0.993 more", () => {
    const forces = demand({ axialN: -50_000, momentStrongNmm: 3e6, momentWeakNmm: -3e5, torsionNmm: 0.72e6 });
    const check = warpedRail(midway, steel, forces, basis);
    const twisted = warpedRail(midway, steel, demand({ torsionNmm: 0.72e6 }), basis);
    expect(check.ok && twisted.ok && check.utilisation - twisted.utilisation).toBeCloseTo(209.9 / 211.5, 2);
    expect(check.ok && warpedUse(midway, steel, basis)(forces)).toBeCloseTo(check.ok ? check.utilisation : NaN, 12);
  });

  it("is not warped where the plate of the seat reaches a cross member, and never less for a longer way", () => {
    const uses = [0, 10, 40, 79].map((nearMm) =>
      warpedUse({ ...midway, nearMm, farMm: 158 - nearMm }, steel, basis)(demand({ torsionNmm: 0.72e6 })),
    );
    expect(uses[0]).toBe(0);
    expect(uses.toSorted((a, b) => a - b)).toEqual(uses);
  });
});

describe("the end of a cross member that keeps a rail from turning", () => {
  const end = { cross: containerMembers["cross member"], rail: section, steel };
  const checks = holdingEnd(end, 0.72e6, basis);

  // Couple 0.72e6/118 = 6102 N. Web: m = 235 × 4.5²/4 = 1190 N, c = 157.5 − 118 = 39.5, strip 40 + 79 = 119 mm:
  // 2 × 1190 × 119 × (1/39.5 + 1/118) = 9568 N, × 0.9 = 8611: 0.709.
  it("by 0.72 kN·m uses 0.709 of the rail's web", () => {
    const web = checks.find(({ limitState }) => limitState === "wall plastification");
    expect(web?.ok === true && web.utilisation).toBeCloseTo(0.709, 3);
  });

  // AISI S100 J2.5 across the weld, from memory: 0.60 × 0.75 × 0.707 × 3 × 482.6 = 460.6 N/mm of throat, less than 0.65 × 4 × 400 beside it,
  // × 40 mm = 18 425 N; 6102/18 425 = 0.331.
  it("uses 0.331 of the fillet of 3 mm along a flange", () => {
    const weld = checks.find(({ limitState }) => limitState === "weld");
    expect(weld?.ok === true && weld.utilisation).toBeCloseTo(0.331, 3);
  });

  it("has both in the table of what is judged", () => {
    for (const { limitState, element } of checks) expect(coverageOf(limitState, element).coverage).toBe("bounded");
  });
});
