import type { TubeSection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import type { Beam } from "./beam.ts";
import { letBraced } from "./lateral-torsional.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** Square or rectangular tube: yielding, flange and web local buckling, lateral-torsional buckling (F7). */
export function tubeFlexure(
  beam: Beam & { readonly section: TubeSection },
  axis: "strong" | "weak",
  basis: SteelBasis,
): Resistance {
  const { section } = beam;
  const working = openWorking(`Strength in bending, tube, ${axis} axis`, aisc(basis, "F7"));
  letModulus(working);
  letYield(working, beam.steel);
  letTube(working, section, axis);
  working.compute("M_p", "F_y*Z", "N·mm", "Eq. F7-1");
  if (!working.when("h/t", "<=", "5.70*sqrt(E/F_y)", "Table B4.1b"))
    return refused("wall too slender for the clause implemented");
  flangeLocal(working);
  webLocal(working);
  const twists = axis === "strong" && section.depthMm > section.widthMm;
  if (twists) tubeLateralTorsional(working, section, beam);
  working.compute("M_n", twists ? "min(M_p, M_FLB, M_WLB, M_LTB)" : "min(M_p, M_FLB, M_WLB)", "N·mm");
  return stateResistance(working, "M_n", "N·mm", memberFactors, basis.method);
}

function letTube(working: OpenWorking, section: TubeSection, axis: "strong" | "weak"): void {
  const { certainty, source } = section;
  const strong = axis === "strong";
  const { depthMm, widthMm, flatDepthMm, flatWidthMm } = section;
  working.let(
    "Z",
    strong ? section.zxMm3 : section.zyMm3,
    "mm³",
    `plastic modulus, ${section.name}`,
    certainty,
    source,
  );
  working.let("S", strong ? section.sxMm3 : section.syMm3, "mm³", "elastic modulus", certainty, source);
  working.let("I", strong ? section.ixMm4 : section.iyMm4, "mm⁴", "second moment", certainty, source);
  working.let("A_g", section.areaMm2, "mm²", "gross area", certainty, source);
  working.let("t", section.wallMm, "mm", "design wall", certainty, source);
  working.let("d", strong ? depthMm : widthMm, "mm", "depth in the plane of bending", certainty, source);
  working.let("b", strong ? flatWidthMm : flatDepthMm, "mm", "flat width of the flange", certainty, source);
  working.let("h", strong ? flatDepthMm : flatWidthMm, "mm", "flat depth of the web", certainty, source);
}

function flangeLocal(working: OpenWorking): void {
  if (working.when("b/t", "<=", "1.12*sqrt(E/F_y)", "Table B4.1b")) {
    working.compute("M_FLB", "M_p", "N·mm");
    return;
  }
  if (working.when("b/t", "<=", "1.40*sqrt(E/F_y)", "Table B4.1b")) {
    working.compute("M_FLB", "min(M_p, M_p - (M_p - F_y*S)*(3.57*b/t*sqrt(F_y/E) - 4.0))", "N·mm", "Eq. F7-2");
    return;
  }
  working.compute("b_e", "min(b, 1.92*t*sqrt(E/F_y)*(1 - 0.38/(b/t)*sqrt(E/F_y)))", "mm", "Eq. F7-4");
  effectiveModulus(working);
  working.compute("M_FLB", "F_y*S_e", "N·mm", "Eq. F7-3");
}

/** What the flange loses is taken off at the middle of its thickness; the axis moves down by y_0. */
function effectiveModulus(working: OpenWorking): void {
  working.compute("A_l", "(b - b_e)*t", "mm²");
  working.compute("y_0", "A_l*(d - t)/2/(A_g - A_l)", "mm");
  working.compute("I_e", "I - A_l*((d - t)/2)^2 - (A_g - A_l)*y_0^2", "mm⁴");
  working.compute("S_e", "I_e/(d/2 + y_0)", "mm³");
}

function webLocal(working: OpenWorking): void {
  if (working.when("h/t", "<=", "2.42*sqrt(E/F_y)", "Table B4.1b")) {
    working.compute("M_WLB", "M_p", "N·mm");
    return;
  }
  working.compute("M_WLB", "min(M_p, M_p - (M_p - F_y*S)*(0.305*h/t*sqrt(F_y/E) - 0.738))", "N·mm", "Eq. F7-6");
}

function tubeLateralTorsional(working: OpenWorking, section: TubeSection, beam: Beam): void {
  const { certainty, source } = section;
  working.let("r_y", section.ryMm, "mm", "radius of gyration, weak axis", certainty, source);
  working.let("J", section.jMm4, "mm⁴", "torsion constant", certainty, source);
  letBraced(working, beam);
  working.compute("L_p", "0.13*E*r_y*sqrt(J*A_g)/M_p", "mm", "Eq. F7-12");
  if (working.when("L_b", "<=", "L_p", "F7.4(a)")) {
    working.compute("M_LTB", "M_p", "N·mm");
    return;
  }
  working.compute("L_r", "2*E*r_y*sqrt(J*A_g)/(0.7*F_y*S)", "mm", "Eq. F7-13");
  if (working.when("L_b", "<=", "L_r", "F7.4(b)")) {
    working.compute("M_LTB", "min(M_p, C_b*(M_p - (M_p - 0.7*F_y*S)*(L_b - L_p)/(L_r - L_p)))", "N·mm", "Eq. F7-10");
    return;
  }
  working.compute("M_LTB", "min(M_p, 2*E*C_b*sqrt(J*A_g)/(L_b/r_y))", "N·mm", "Eq. F7-11");
}
