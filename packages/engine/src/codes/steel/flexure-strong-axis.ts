import type { ISection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { webHeightMm } from "./effective-area.ts";
import type { Beam } from "./beam.ts";
import { lateralTorsional, letBraced } from "./lateral-torsional.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** I shape about its strong axis: yielding and lateral-torsional buckling (F2), flange local buckling (F3). */
export function strongAxisFlexure(beam: Beam & { readonly section: ISection }, basis: SteelBasis): Resistance {
  const { section } = beam;
  const working = openWorking("Strength in bending, strong axis", aisc(basis, "F2, F3"));
  letModulus(working);
  letYield(working, beam.steel);
  letShape(working, section);
  if (!working.when("h/t_w", "<=", "3.76*sqrt(E/F_y)", "Table B4.1b"))
    return refused("web too slender for the clause implemented");
  working.compute("M_p", "F_y*Z_x", "N·mm", "Eq. F2-1");
  letBraced(working, beam);
  letTorsion(working, section);
  lateralTorsional(working);
  flangeLocal(working);
  working.compute("M_n", "min(M_p, M_LTB, M_FLB)", "N·mm");
  return stateResistance(working, "M_n", "N·mm", memberFactors, basis.method);
}

function letShape(working: OpenWorking, section: ISection): void {
  const { certainty, source } = section;
  working.let("Z_x", section.zxMm3, "mm³", `plastic modulus, ${section.name}`, certainty, source);
  working.let("S_x", section.sxMm3, "mm³", "elastic modulus", certainty, source);
  working.let("h", webHeightMm(section), "mm", "clear height of the web", certainty, source);
  working.let("t_w", section.webMm, "mm", "web", certainty, source);
  working.let("b_f", section.flangeWidthMm, "mm", "flange width", certainty, source);
  working.let("t_f", section.flangeMm, "mm", "flange", certainty, source);
}

function letTorsion(working: OpenWorking, section: ISection): void {
  const { certainty, source } = section;
  working.let("I_y", section.iyMm4, "mm⁴", "second moment, weak axis", certainty, source);
  working.let("r_y", section.ryMm, "mm", "radius of gyration, weak axis", certainty, source);
  working.let("J", section.jMm4, "mm⁴", "torsion constant", certainty, source);
  working.let("C_w", section.cwMm6, "mm⁶", "warping constant", certainty, source);
  working.let("h_0", section.depthMm - section.flangeMm, "mm", "between flange centroids", certainty, source);
  working.let("c", 1, "1", "doubly symmetric", "memory");
}

/** F3.2; M_p where the flange is compact. */
function flangeLocal(working: OpenWorking): void {
  working.compute("λ_f", "b_f/(2*t_f)", "1");
  if (working.when("λ_f", "<=", "0.38*sqrt(E/F_y)", "Table B4.1b")) {
    working.compute("M_FLB", "M_p", "N·mm");
    return;
  }
  if (working.when("λ_f", "<=", "sqrt(E/F_y)", "Table B4.1b")) {
    working.compute(
      "M_FLB",
      "M_p - (M_p - 0.7*F_y*S_x)*(λ_f - 0.38*sqrt(E/F_y))/(0.62*sqrt(E/F_y))",
      "N·mm",
      "Eq. F3-1",
    );
    return;
  }
  working.compute("k_c", "min(0.76, max(0.35, 4/sqrt(h/t_w)))", "1", "F3.2(b)");
  working.compute("M_FLB", "0.9*E*k_c*S_x/λ_f^2", "N·mm", "Eq. F3-2");
}
