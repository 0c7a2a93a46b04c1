import type { ChannelSection } from "../../catalog/sections/section.ts";
import { openWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { webHeightMm } from "./effective-area.ts";
import type { Beam } from "./beam.ts";
import { lateralTorsional, letBraced } from "./lateral-torsional.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/**
 * Rolled channel about its strong axis (F2). The load is taken to pass through the shear centre; twist from a load that
 * does not is a separate matter. Refused when web or flange is not compact.
 */
export function channelFlexure(beam: Beam & { readonly section: ChannelSection }, basis: SteelBasis): Resistance {
  const { section } = beam;
  const { certainty, source } = section;
  const working = openWorking("Strength in bending, channel, strong axis", aisc(basis, "F2"));
  letModulus(working);
  letYield(working, beam.steel);
  working.let("Z_x", section.zxMm3, "mm³", `plastic modulus, ${section.name}`, certainty, source);
  working.let("S_x", section.sxMm3, "mm³", "elastic modulus", certainty, source);
  working.let("b_f", section.flangeWidthMm, "mm", "flange width", certainty, source);
  working.let("t_f", section.flangeMm, "mm", "flange", certainty, source);
  working.let("h", webHeightMm(section), "mm", "clear height of the web", certainty, source);
  working.let("t_w", section.webMm, "mm", "web", certainty, source);
  const compactWeb = working.when("h/t_w", "<=", "3.76*sqrt(E/F_y)", "Table B4.1b");
  const compactFlange = working.when("b_f/t_f", "<=", "0.38*sqrt(E/F_y)", "Table B4.1b");
  if (!compactWeb || !compactFlange) return refused("web too slender for the clause implemented");
  working.compute("M_p", "F_y*Z_x", "N·mm", "Eq. F2-1");
  letBraced(working, beam);
  working.let("I_y", section.iyMm4, "mm⁴", "second moment, weak axis", certainty, source);
  working.let("r_y", section.ryMm, "mm", "radius of gyration, weak axis", certainty, source);
  working.let("J", section.jMm4, "mm⁴", "torsion constant", certainty, source);
  working.let("C_w", section.cwMm6, "mm⁶", "warping constant", certainty, source);
  working.let("h_0", section.depthMm - section.flangeMm, "mm", "between flange centroids", certainty, source);
  working.compute("c", "h_0/2*sqrt(I_y/C_w)", "1", "Eq. F2-8b");
  lateralTorsional(working);
  working.compute("M_n", "min(M_p, M_LTB)", "N·mm");
  return stateResistance(working, "M_n", "N·mm", memberFactors, basis.method);
}
