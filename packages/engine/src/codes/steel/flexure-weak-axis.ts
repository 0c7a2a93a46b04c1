import type { ChannelSection, ISection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import type { Beam } from "./beam.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** I shape or channel about its weak axis: yielding and flange local buckling (F6). */
export function weakAxisFlexure(
  beam: Beam & { readonly section: ISection | ChannelSection },
  basis: SteelBasis,
): Resistance {
  const { section } = beam;
  const { certainty, source } = section;
  const working = openWorking("Strength in bending, weak axis", aisc(basis, "F6"));
  letModulus(working);
  letYield(working, beam.steel);
  working.let("Z_y", section.zyMm3, "mm³", `plastic modulus, ${section.name}`, certainty, source);
  working.let("S_y", section.syMm3, "mm³", "elastic modulus", certainty, source);
  const outstand = section.kind === "I" ? section.flangeWidthMm / 2 : section.flangeWidthMm;
  working.let("b", outstand, "mm", "outstand of the flange", certainty, source);
  working.let("t_f", section.flangeMm, "mm", "flange", certainty, source);
  working.compute("M_p", "min(F_y*Z_y, 1.6*F_y*S_y)", "N·mm", "Eq. F6-1");
  flangeLocal(working);
  working.compute("M_n", "min(M_p, M_FLB)", "N·mm");
  return stateResistance(working, "M_n", "N·mm", memberFactors, basis.method);
}

function flangeLocal(working: OpenWorking): void {
  working.compute("λ_f", "b/t_f", "1");
  if (working.when("λ_f", "<=", "0.38*sqrt(E/F_y)", "Table B4.1b")) {
    working.compute("M_FLB", "M_p", "N·mm");
    return;
  }
  if (working.when("λ_f", "<=", "sqrt(E/F_y)", "Table B4.1b")) {
    working.compute(
      "M_FLB",
      "M_p - (M_p - 0.7*F_y*S_y)*(λ_f - 0.38*sqrt(E/F_y))/(0.62*sqrt(E/F_y))",
      "N·mm",
      "Eq. F6-2",
    );
    return;
  }
  working.compute("M_FLB", "0.69*E/λ_f^2*S_y", "N·mm", "Eq. F6-3, F6-4");
}
