import { describe, expect, it } from "vitest";
import { e70Mpa, steels } from "../../src/catalog/materials.ts";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { frameWeld, weldFlow } from "../../src/checks/frame-weld.ts";

const basis = checkBasisOf("IBC 2021", "LRFD");
const tube = { depthMm: 100, widthMm: 100 };
const nothing = {
  axialN: 0,
  shearStrongN: 0,
  shearWeakN: 0,
  momentStrongNmm: 0,
  momentWeakNmm: 0,
  torsionNmm: 0,
};
const strength = basis.fillet({
  ...{ legMm: 5, lengthMm: 100, angleDegree: 0, electrodeMpa: e70Mpa, endLoaded: false, tubeEnd: true },
  thinner: { thicknessMm: 6, steel: steels.tube },
});

// By hand, the weld as a line round 100 × 100 mm: 400 mm long, S = 100·100 + 100²/3 = 13 333 mm², J = 200³/6 = 1 333 333 mm³,
// its corner 70.7 mm from the middle.
describe("a weld all round a tube of 100 by 100 mm", () => {
  it.each([
    ["40 kN along it", { axialN: 40_000 }, 100],
    ["30 and 40 kN across it", { shearStrongN: 30_000, shearWeakN: -40_000 }, 125],
    ["2 kN·m by its strong axis", { momentStrongNmm: -2e6 }, 150],
    ["2 kN·m by its weak axis", { momentWeakNmm: 2e6 }, 150],
    ["1 kN·m of torsion", { torsionNmm: 1e6 }, 53.033],
    ["40 kN along and 50 kN across", { axialN: 40_000, shearStrongN: 50_000 }, 160.078],
  ])("flows under %s", (_, forces, flow) => {
    expect(weldFlow({ ...nothing, ...forces }, tube)).toBeCloseTo(flow, 2);
  });

  // AISC 360 J2.4, from memory: 0.75 · 0.6 · 482.6 MPa · 0.707 · 5 mm = 767.7 N/mm of throat; beside it 6 mm of tube.
  it("is held against its throat, and its working says what its screening does", () => {
    const demand = { ...nothing, axialN: 40_000, momentStrongNmm: 2e6, shearWeakN: 10_000 };
    const check = frameWeld({ element: "jamb", limitState: "weld" }, demand, tube, strength);
    if (!check.ok || !strength.ok) throw new Error("the weld has a strength");
    expect(strength.available / 100).toBeLessThanOrEqual(767.8);
    expect(check.utilisation).toBeCloseTo((100 * weldFlow(demand, tube)) / strength.available, 9);
  });

  it("is refused for a bar that is no tube", () => {
    const check = frameWeld({ element: "jamb", limitState: "weld" }, nothing, undefined, strength);
    expect(check.ok).toBe(false);
  });
});
