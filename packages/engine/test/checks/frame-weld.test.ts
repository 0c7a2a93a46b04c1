import { describe, expect, it } from "vitest";
import { e70Mpa, steels } from "../../src/catalog/materials.ts";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { frameWeld, weldFlow, type WeldStrengths } from "../../src/checks/frame-weld.ts";

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
const strengthsOn = (thicknessMm: number): WeldStrengths => {
  const weld = { legMm: 5, lengthMm: 100, electrodeMpa: e70Mpa, endLoaded: false, tubeEnd: true } as const;
  const thinner = { thicknessMm, steel: steels.tube };
  return {
    along: basis.fillet({ ...weld, angleDegree: 0, thinner }),
    across: basis.fillet({ ...weld, angleDegree: 90, thinner }),
  };
};

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
    expect(weldFlow({ ...nothing, ...forces }, tube, 1)).toBeCloseTo(flow, 2);
  });

  // AISC 360 J2.4, from memory: 0.75 · 0.6 · 482.6 MPa · 0.707 · 5 mm = 767.7 N/mm of throat; beside it 6 mm of tube.
  it("is held against its throat, and its working says what its screening does", () => {
    const demand = { ...nothing, axialN: 40_000, momentStrongNmm: 2e6, shearWeakN: 10_000 };
    const { along, across } = strengthsOn(6);
    const check = frameWeld({ element: "jamb", limitState: "weld" }, demand, tube, { along, across });
    if (!check.ok || !along.ok || !across.ok) throw new Error("the weld has a strength");
    expect(along.available / 100).toBeLessThanOrEqual(767.8);
    expect(across.available).toBe(along.available);
    expect(check.utilisation).toBeCloseTo((100 * weldFlow(demand, tube, 1)) / along.available, 9);
  });

  // AISI S100 J2.5, from memory: along 0.50 · 0.75 · 3 mm · F_u, across the less of 0.65 · 3 mm · F_u and its throat,
  // 0.60 · 0.75 · 0.707 · 5 mm · 482.6 MPa = 767.7 N/mm.
  it("on thin steel takes more across its line than along it", () => {
    const fuMpa = steels.tube.fuMpa;
    const { along, across } = strengthsOn(3);
    const bent = { ...nothing, axialN: 40_000, momentStrongNmm: 2e6, shearWeakN: 10_000 };
    const check = frameWeld({ element: "jamb", limitState: "weld" }, bent, tube, { along, across });
    if (!check.ok || !along.ok || !across.ok) throw new Error("the weld has a strength");
    expect(along.available).toBeCloseTo(112.5 * fuMpa, 3);
    expect(across.available).toBeCloseTo(Math.min(195 * fuMpa, 0.6 * 0.75 * 0.707 * 500 * e70Mpa), 3);
    // 40 000 / 400 + 2e6 / 13 333 = 250 N/mm across, 10 000 / 400 = 25 along
    const [of, and] = [250 / (across.available / 100), 25 / (along.available / 100)];
    expect(check.utilisation).toBeCloseTo(Math.sqrt(of * of + and * and), 6);
  });

  // AISC 360 Eq. J2-5: 1 + 0.5 sin^1.5 θ of the strength along, 1.5 of it across.
  it.each([5, 15, 30, 45, 60, 75, 85])(
    "takes no more at %i degrees to its line than the code's curve would",
    (degree) => {
      const [along, across] = [Math.cos((degree * Math.PI) / 180), Math.sin((degree * Math.PI) / 180)];
      const byEllipse = 1 / Math.sqrt(along ** 2 + (across / 1.5) ** 2);
      const pull = { ...nothing, axialN: 400 * across, shearStrongN: 400 * along };
      expect(1 / weldFlow(pull, tube, 1 / 1.5)).toBeCloseTo(byEllipse, 9);
      expect(byEllipse).toBeLessThanOrEqual(1 + 0.5 * across ** 1.5);
    },
  );

  it("is refused for a bar that is no tube", () => {
    const check = frameWeld({ element: "jamb", limitState: "weld" }, nothing, undefined, strengthsOn(6));
    expect(check.ok).toBe(false);
  });
});
