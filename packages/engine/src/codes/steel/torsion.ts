import type { Steel } from "../../catalog/materials.ts";
import type { OpenSection } from "../../catalog/sections/open-section.ts";
import type { ChannelSection, ISection, TubeSection } from "../../catalog/sections/section.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** Rectangular tube in torsion (H3.1), N·mm: T_n = F_cr C with C = 2(B − t)(H − t)t − 4.5(4 − π)t³. */
export function tubeTorsion(
  member: { readonly section: TubeSection; readonly steel: Steel },
  basis: SteelBasis,
): Resistance {
  const { section, steel } = member;
  const { certainty, source } = section;
  const working = openWorking("Tube in torsion", aisc(basis, "H3.1"));
  letModulus(working);
  letYield(working, steel);
  working.let("B", section.widthMm, "mm", `width, ${section.name}`, certainty, source);
  working.let("H", section.depthMm, "mm", "depth", certainty, source);
  working.let("t", section.wallMm, "mm", "design wall", certainty, source);
  working.let("h", Math.max(section.flatDepthMm, section.flatWidthMm), "mm", "longer flat", certainty, source);
  working.compute("C", "2*(B - t)*(H - t)*t - 4.5*(4 - π)*t^3", "mm³", "H3.1");
  if (working.when("h/t", "<=", "2.45*sqrt(E/F_y)", "H3.1(b)(1)"))
    working.compute("F_cr", "0.6*F_y", "MPa", "Eq. H3-3");
  else if (working.when("h/t", "<=", "3.07*sqrt(E/F_y)", "H3.1(b)(2)"))
    working.compute("F_cr", "0.6*F_y*2.45*sqrt(E/F_y)/(h/t)", "MPa", "Eq. H3-4");
  else working.compute("F_cr", "0.458*π^2*E/(h/t)^2", "MPa", "Eq. H3-5");
  working.compute("T_n", "F_cr*C", "N·mm", "Eq. H3-1");
  return stateResistance(working, "T_n", "N·mm", memberFactors, basis.method);
}

/** What torsion of an open shape needs: J and the thickest wall. */
export type OpenShape = { readonly name: string; readonly jMm4: number; readonly thickestMm: number };

export const openShapeOf = (
  section: ISection | ChannelSection | (OpenSection & { readonly name: string; readonly thicknessMm: number }),
): OpenShape => ({
  name: section.name,
  jMm4: section.jMm4,
  thickestMm: "thicknessMm" in section ? section.thicknessMm : Math.max(section.webMm, section.flangeMm),
});

/**
 * Open shape in torsion, N·mm: the whole torque as St Venant shear, T = 0.6 F_y J/t. Warping is left out, which is on the
 * safe side for a ductile member: a stress field in equilibrium that nowhere yields (H3.3; lower bound theorem).
 */
export function openTorsion(shape: OpenShape, steel: Steel, basis: SteelBasis): Resistance {
  const working = openWorking("Open shape in torsion, bounded", aisc(basis, "H3.3, bounded"));
  letYield(working, steel);
  working.let("J", shape.jMm4, "mm⁴", `torsion constant, ${shape.name}`, "derived");
  working.let("t", shape.thickestMm, "mm", "thickest wall", "derived");
  working.compute("T_n", "0.6*F_y*J/t", "N·mm");
  return stateResistance(working, "T_n", "N·mm", memberFactors, basis.method);
}
