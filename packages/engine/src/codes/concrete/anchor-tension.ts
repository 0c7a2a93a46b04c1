import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aci, type AnchorGroup } from "./anchor-group.ts";

/** φ of ductile steel in tension, and of concrete without supplementary reinforcement (17.5.3). No allowable-stress form. */
const steelFactors: StrengthFactors = { phi: 0.75, omega: 1, certainty: "memory" };
export const concreteFactors: StrengthFactors = { phi: 0.7, omega: 1, certainty: "memory" };

/** Steel of a group in tension (17.6.1), N, strength design. */
export function anchorSteelTension(group: AnchorGroup): Resistance {
  const working = openWorking("Anchors, steel in tension", aci("17.6.1"));
  letSteel(working, group);
  working.compute("N_n", "n*A_se*f_uta", "N", "Eq. 17.6.1.2");
  return stateResistance(working, "N_n", "N", steelFactors, "LRFD");
}

export function letSteel(working: OpenWorking, group: AnchorGroup): void {
  working.let("n", group.count, "1", "anchors", "derived");
  working.let("A_se", group.steelAreaMm2, "mm²", "steel area of one", "derived");
  // 17.6.1.2 holds f_uta to 860 MPa.
  working.let("f_uta", Math.min(group.tensileMpa, 860), "MPa", "tensile strength of the steel", "derived");
}

/** Concrete breakout of a group in tension, cracked concrete (17.6.2), N, strength design. */
export function anchorBreakout(group: AnchorGroup): Resistance {
  const working = openWorking("Anchors, concrete breakout in tension", aci("17.6.2"));
  breakout(working, group);
  return stateResistance(working, "N_n", "N", concreteFactors, "LRFD");
}

/** Records N_n of breakout; the pull of an eccentric group is not covered, the load passes through its middle. */
export function breakout(working: OpenWorking, group: AnchorGroup): void {
  const { edge } = group;
  working.let("f_c", group.concreteMpa, "MPa", "concrete strength", "derived");
  working.let("h_ef", group.depthMm, "mm", "effective depth", "derived");
  working.let("n_a", group.count, "1", "anchors", "derived");
  working.let("s_x", group.spacingXMm, "mm", "between the outermost, one way", "derived");
  working.let("s_y", group.spacingYMm, "mm", "between the outermost, other way", "derived");
  working.let("c_1", edge.leftMm, "mm", "to the edge, left", "derived");
  working.let("c_2", edge.rightMm, "mm", "to the edge, right", "derived");
  working.let("c_3", edge.frontMm, "mm", "to the edge, front", "derived");
  working.let("c_4", edge.backMm, "mm", "to the edge, back", "derived");
  working.let("k_c", group.installed === "post-installed" ? 7 : 10, "1", `${group.installed}, cracked`, "memory");
  working.compute("r", "1.5*h_ef", "mm");
  working.compute("A_Nco", "9*h_ef^2", "mm²", "Eq. 17.6.2.1.4");
  working.compute(
    "A_Nc",
    "min(n_a*A_Nco, (min(c_1, r) + s_x + min(c_2, r))*(min(c_3, r) + s_y + min(c_4, r)))",
    "mm²",
    "17.6.2.1.1",
  );
  working.compute("ψ_ed", "min(1, 0.7 + 0.3*min(c_1, c_2, c_3, c_4)/r)", "1", "Eq. 17.6.2.4.1");
  working.compute("N_b", "k_c*sqrt(f_c)*h_ef^1.5", "N", "Eq. 17.6.2.2.1");
  working.let("ψ_s", group.seismic ? 0.75 : 1, "1", "seismic", "memory");
  working.compute("N_n", "ψ_s*A_Nc/A_Nco*ψ_ed*N_b", "N", "Eq. 17.6.2.1b");
}

/** Pull-out of headed anchors, cracked concrete (17.6.3), N. Refused for post-installed ones and without a head's area. */
export function anchorPullout(group: AnchorGroup): Resistance {
  if (group.installed === "post-installed" || group.headMm2 === undefined)
    return refused("shape not covered by this check");
  const working = openWorking("Anchors, pull-out", aci("17.6.3"));
  working.let("n", group.count, "1", "anchors", "derived");
  working.let("A_brg", group.headMm2, "mm²", "bearing area of one head", "derived");
  working.let("f_c", group.concreteMpa, "MPa", "concrete strength", "derived");
  working.let("ψ_s", group.seismic ? 0.75 : 1, "1", "seismic", "memory");
  working.compute("N_n", "ψ_s*n*8*A_brg*f_c", "N", "Eq. 17.6.3.2.2a");
  return stateResistance(working, "N_n", "N", concreteFactors, "LRFD");
}
