import type { Steel } from "../../catalog/materials.ts";
import type { ChannelSection, ISection, Section, TubeSection } from "../../catalog/sections/section.ts";
import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { webHeightMm } from "./effective-area.ts";
import { aisc, fullYieldFactors, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** Strength in shear along the depth, N: I shapes and channels by G2.1, tubes by G4. */
export function shear(member: { readonly section: Section; readonly steel: Steel }, basis: SteelBasis): Resistance {
  const { section, steel } = member;
  if (section.kind === "angle" || section.kind === "pressed") return refused("shape not covered by this check");
  const working = openWorking("Strength in shear", aisc(basis, section.kind === "tube" ? "G4" : "G2.1"));
  letModulus(working);
  letYield(working, steel);
  const factors = section.kind === "tube" ? tubeShear(working, section) : webShear(working, section);
  return stateResistance(working, "V_n", "N", factors, basis.method);
}

function webShear(working: OpenWorking, section: ISection | ChannelSection): StrengthFactors {
  const { certainty, source } = section;
  working.let("d", section.depthMm, "mm", `depth, ${section.name}`, certainty, source);
  working.let("t_w", section.webMm, "mm", "web", certainty, source);
  working.let("h", webHeightMm(section), "mm", "clear height of the web", certainty, source);
  working.compute("A_w", "d*t_w", "mm²");
  if (section.kind === "I" && working.when("h/t_w", "<=", "2.24*sqrt(E/F_y)", "G2.1(a)")) {
    working.compute("V_n", "0.6*F_y*A_w", "N", "Eq. G2-1");
    return fullYieldFactors;
  }
  working.let("k_v", 5.34, "1", "web without stiffeners", "memory");
  const stocky = working.when("h/t_w", "<=", "1.10*sqrt(k_v*E/F_y)", "G2.1(b)");
  working.compute("C_v", stocky ? "1" : "1.10*sqrt(k_v*E/F_y)/(h/t_w)", "1", stocky ? "Eq. G2-3" : "Eq. G2-4");
  working.compute("V_n", "0.6*F_y*A_w*C_v", "N", "Eq. G2-1");
  return memberFactors;
}

function tubeShear(working: OpenWorking, section: TubeSection): StrengthFactors {
  const { certainty, source } = section;
  working.let("h", section.flatDepthMm, "mm", `flat depth, ${section.name}`, certainty, source);
  working.let("t", section.wallMm, "mm", "design wall", certainty, source);
  working.compute("A_w", "2*h*t", "mm²", "G4");
  working.let("k_v", 5, "1", "tube", "memory");
  if (working.when("h/t", "<=", "1.10*sqrt(k_v*E/F_y)", "G2.2(b)(1)")) working.compute("C_v", "1", "1", "Eq. G2-9");
  else if (working.when("h/t", "<=", "1.37*sqrt(k_v*E/F_y)", "G2.2(b)(2)"))
    working.compute("C_v", "1.10*sqrt(k_v*E/F_y)/(h/t)", "1", "Eq. G2-10");
  else working.compute("C_v", "1.51*k_v*E/((h/t)^2*F_y)", "1", "Eq. G2-11");
  working.compute("V_n", "0.6*F_y*A_w*C_v", "N", "Eq. G4-1");
  return memberFactors;
}
