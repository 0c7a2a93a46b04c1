import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aci, type AnchorGroup } from "./anchor-group.ts";
import { breakout, concreteFactors, letSteel } from "./anchor-tension.ts";

/** φ of ductile steel in shear (17.5.3). */
const steelFactors: StrengthFactors = { phi: 0.65, omega: 1, certainty: "memory" };

/** Steel of a group in shear (17.7.1), N, strength design; a grout pad cuts it to 0.8. */
export function anchorSteelShear(group: AnchorGroup, grouted: boolean): Resistance {
  const working = openWorking("Anchors, steel in shear", aci("17.7.1"));
  letSteel(working, group);
  working.let("c_g", grouted ? 0.8 : 1, "1", "grout pad", "memory");
  working.compute("V_n", "c_g*n*0.6*A_se*f_uta", "N", "Eq. 17.7.1.2b");
  return stateResistance(working, "V_n", "N", steelFactors, "LRFD");
}

/**
 * Concrete breakout towards the right edge, cracked concrete without edge reinforcement (17.7.2), N, strength design. The
 * anchors nearest that edge bear all of the shear.
 */
export function anchorShearBreakout(group: AnchorGroup): Resistance {
  const { edge } = group;
  const working = openWorking("Anchors, concrete breakout in shear", aci("17.7.2"));
  working.let("f_c", group.concreteMpa, "MPa", "concrete strength", "derived");
  working.let("d_a", group.diameterMm, "mm", "anchor diameter", "derived");
  working.let("h_ef", group.depthMm, "mm", "effective depth", "derived");
  working.let("h_a", group.concreteThicknessMm, "mm", "concrete thickness", "derived");
  working.let("c_a1", edge.rightMm, "mm", "to the edge the shear points to", "derived");
  working.let("c_3", edge.frontMm, "mm", "to the edge, front", "derived");
  working.let("c_4", edge.backMm, "mm", "to the edge, back", "derived");
  working.let("s_y", group.spacingYMm, "mm", "between the outermost along that edge", "derived");
  working.compute("r", "1.5*c_a1", "mm");
  working.compute("l_e", "min(h_ef, 8*d_a)", "mm", "17.7.2.2.1");
  working.compute("A_Vco", "4.5*c_a1^2", "mm²", "Eq. 17.7.2.1.3");
  working.compute("A_Vc", "(min(c_3, r) + s_y + min(c_4, r))*min(h_a, r)", "mm²", "17.7.2.1.1");
  working.compute("V_b", "min(0.6*(l_e/d_a)^0.2*sqrt(d_a), 3.7)*sqrt(f_c)*c_a1^1.5", "N", "Eq. 17.7.2.2.1a, b");
  working.compute("ψ_ed", "min(1, 0.7 + 0.3*min(c_3, c_4)/r)", "1", "Eq. 17.7.2.4.1");
  working.compute("ψ_h", "max(1, sqrt(r/h_a))", "1", "Eq. 17.7.2.6.1");
  working.compute("V_n", "A_Vc/A_Vco*ψ_ed*ψ_h*V_b", "N", "Eq. 17.7.2.1b");
  return stateResistance(working, "V_n", "N", concreteFactors, "LRFD");
}

/** Pry-out of a group in shear (17.7.3), N: one or two times the breakout in tension. */
export function anchorPryout(group: AnchorGroup): Resistance {
  const working = openWorking("Anchors, pry-out", aci("17.7.3"));
  breakout(working, group);
  working.let("k_cp", group.depthMm < 63.5 ? 1 : 2, "1", "by the depth", "memory");
  working.compute("V_n", "k_cp*N_n", "N", "Eq. 17.7.3.1b");
  return stateResistance(working, "V_n", "N", concreteFactors, "LRFD");
}
