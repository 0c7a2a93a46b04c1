import type { Steel } from "../../catalog/materials.ts";
import type { TubeSection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letModulus, letShearModulus, letYield } from "../steel/steel-basis.ts";
import { aisi, compressionFactors, flexureFactors, shearFactors, type ColdFormedBasis } from "./cold-formed-basis.ts";
import { globalStress } from "./pressed-compression.ts";
import { webShear } from "./web-shear.ts";

export type ThinTube = { readonly section: TubeSection; readonly steel: Steel };

/** Tube pressed from thin sheet in compression, N (E2, E3.1). Lengths mm, > 0. */
export function thinTubeCompression(
  tube: ThinTube & { readonly lengthXMm: number; readonly lengthYMm: number },
  basis: ColdFormedBasis,
): Resistance {
  const working = openTube("Thin tube in compression", "E2, E3.1; Appendix 1", tube, basis);
  working.let("L_x", tube.lengthXMm, "mm", "effective length, strong axis", "derived");
  working.let("L_y", tube.lengthYMm, "mm", "effective length, weak axis", "derived");
  working.compute("F_cre", "min(π^2*E/(L_x/r_x)^2, π^2*E/(L_y/r_y)^2)", "MPa", "Eq. E2.1-1");
  globalStress(working);
  lostEvenly(working, "d", "F_n");
  lostEvenly(working, "b", "F_n");
  working.compute("A_e", "A_g - 2*A_d - 2*A_b", "mm²");
  working.compute("P_n", "A_e*F_n", "N", "Eq. E3.1-1");
  return stateResistance(working, "P_n", "N", compressionFactors, basis.method);
}

/**
 * Tube pressed from thin sheet bent in the plane of its depth, N·mm (F2.1.4, F3.1): the pressed wall loses what does not
 * work at F_n; webs must be whole under their stress gradient, refused otherwise.
 */
export function thinTubeFlexure(
  tube: ThinTube & { readonly unbracedMm: number; readonly cb: number },
  basis: ColdFormedBasis,
): Resistance {
  const working = openTube("Thin tube in bending", "F2.1.4, F3.1; Appendix 1", tube, basis);
  const { section } = tube;
  letShearModulus(working);
  working.let("S_f", section.sxMm3, "mm³", "gross modulus", section.certainty, section.source);
  working.let("d", section.depthMm, "mm", "depth", section.certainty, section.source);
  working.let("J", section.jMm4, "mm⁴", "torsion constant", section.certainty, section.source);
  working.let("I_y", section.iyMm4, "mm⁴", "second moment, weak axis", section.certainty, section.source);
  working.let("L_b", tube.unbracedMm, "mm", "length between lateral supports", "derived");
  working.let("C_b", tube.cb, "1", "moment gradient", "derived");
  working.compute("L_u", "0.36*C_b*π/(F_y*S_f)*sqrt(E*G*J*I_y)", "mm", "Eq. F2.1.4-1");
  if (working.when("L_b", "<=", "L_u", "F2.1.4")) working.compute("F_n", "F_y", "MPa");
  else closedStress(working);
  lostEvenly(working, "b", "F_n");
  effectiveModulus(working);
  if (!websWhole(working)) return refused("web too slender for the clause implemented");
  working.compute("M_n", "S_e*F_n", "N·mm", "Eq. F3.1-1");
  return stateResistance(working, "M_n", "N·mm", flexureFactors, basis.method);
}

/** What the pressed wall loses is taken off at the middle of its thickness; the axis moves away from it by y_0. */
function effectiveModulus(working: OpenWorking): void {
  working.compute("y_0", "A_b*(d - t)/2/(A_g - A_b)", "mm");
  working.compute("I_e", "S_f*d/2 - A_b*((d - t)/2)^2 - (A_g - A_b)*y_0^2", "mm⁴");
  working.compute("S_e", "I_e/(d/2 + y_0)", "mm³");
}

/** Whether the webs' pressed part works whole at the stress of the pressed face (Appendix 1, 1.1.2, ψ > 0.236). */
function websWhole(working: OpenWorking): boolean {
  working.compute("ψ", "(d/2 - y_0 - t)/(d/2 + y_0 - t)", "1", "App. 1, 1.1.2");
  working.compute("k_w", "4 + 2*(1 + ψ)^3 + 2*(1 + ψ)", "1", "App. 1, Eq. 1.1.2-2");
  working.compute("λ_w", "sqrt(F_n/(k_w*π^2*E/(12*(1 - 0.3^2))*(t/w_d)^2))", "1", "App. 1, Eq. 1.1-2");
  const whole = working.when("λ_w", "<=", "0.673", "App. 1, 1.1");
  working.compute("ρ_w", whole ? "1" : "(1 - 0.22/λ_w)/λ_w", "1", "App. 1, Eq. 1.1-3");
  return working.when("d/2 + y_0 - t", "<=", "ρ_w*w_d*(1/(3 + ψ) + 0.5)", "App. 1, 1.1.2: b_1 + b_2");
}

/** Two webs of a thin tube in shear, N (G2.1). */
export function thinTubeShear(tube: ThinTube, basis: ColdFormedBasis): Resistance {
  const working = openTube("Thin tube in shear", "G2.1, two webs", tube, basis);
  working.let("k_v", 5.34, "1", "web without stiffeners", "memory");
  working.compute("V_y", "0.6*2*w_d*t*F_y", "N", "Eq. G2.1-5");
  working.compute("V_cr", "2*w_d*t*π^2*E*k_v/(12*(1 - 0.3^2)*(w_d/t)^2)", "N", "Eq. G2.3-1, G2.3-2");
  webShear(working);
  return stateResistance(working, "V_n", "N", shearFactors, basis.method);
}

function openTube(title: string, place: string, { section, steel }: ThinTube, basis: ColdFormedBasis): OpenWorking {
  const { certainty, source, name } = section;
  const working = openWorking(title, aisi(basis, place));
  letModulus(working);
  letYield(working, steel);
  working.let("A_g", section.areaMm2, "mm²", `gross area, ${name}`, certainty, source);
  working.let("r_x", section.rxMm, "mm", "radius of gyration, strong axis", certainty, source);
  working.let("r_y", section.ryMm, "mm", "radius of gyration, weak axis", certainty, source);
  working.let("t", section.wallMm, "mm", "wall", certainty, source);
  // No inside radius is known: flats run between square corners.
  working.let("w_d", section.depthMm - 2 * section.wallMm, "mm", "flat along the depth", certainty, source);
  working.let("w_b", section.widthMm - 2 * section.wallMm, "mm", "flat along the width", certainty, source);
  return working;
}

/** F2.1.4: the stress of a closed section beyond L_u. */
function closedStress(working: OpenWorking): void {
  working.compute("F_cre", "C_b*π/(L_b*S_f)*sqrt(E*G*J*I_y)", "MPa", "Eq. F2.1.4-2");
  if (working.when("F_cre", ">=", "2.78*F_y", "F2.1")) working.compute("F_n", "F_y", "MPa", "Eq. F2.1-3");
  else if (working.when("F_cre", ">", "0.56*F_y", "F2.1"))
    working.compute("F_n", "10/9*F_y*(1 - 10*F_y/(36*F_cre))", "MPa", "Eq. F2.1-4");
  else working.compute("F_n", "F_cre", "MPa", "Eq. F2.1-5");
}

/** Records A_d or A_b, what one wall along the depth or the width loses evenly pressed at a stress (k 4). */
function lostEvenly(working: OpenWorking, mark: "d" | "b", stress: string): void {
  working.compute(`λ_${mark}`, `sqrt(${stress}/(4*π^2*E/(12*(1 - 0.3^2))*(t/w_${mark})^2))`, "1", "App. 1, Eq. 1.1-2");
  const whole = working.when(`λ_${mark}`, "<=", "0.673", "App. 1, 1.1");
  working.compute(`ρ_${mark}`, whole ? "1" : `(1 - 0.22/λ_${mark})/λ_${mark}`, "1", "App. 1, Eq. 1.1-3");
  working.compute(`A_${mark}`, `(1 - ρ_${mark})*w_${mark}*t`, "mm²");
}
