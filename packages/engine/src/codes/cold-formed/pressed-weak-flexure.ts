import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import { openWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letModulus, letYield } from "../steel/steel-basis.ts";
import { asChannel, flatFlangeMm } from "./channel-member.ts";
import { aisi, flexureFactors, type ColdFormedBasis } from "./cold-formed-basis.ts";

/**
 * Unlipped channel bent across its web, N·mm: first yield of the gross section, with the stress held to what the wider
 * flange bears at its tip as if evenly pressed (k 0.43): on the safe side of Appendix 1, 1.2.2.
 */
export function pressedWeakFlexure(
  beam: { readonly section: PressedSection; readonly steel: Steel },
  basis: ColdFormedBasis,
): Resistance {
  const { section, steel } = beam;
  const channel = asChannel(section, steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const working = openWorking("Pressed channel in bending, across its web", aisi(basis, "F3.1, bounded"));
  letModulus(working);
  letYield(working, steel);
  working.let("S_y", section.syMm3, "mm³", `gross modulus, ${section.name}`, section.certainty, section.source);
  working.let("t", section.thicknessMm, "mm", "thickness", section.certainty, section.source);
  const widest = Math.max(flatFlangeMm(channel, "head"), flatFlangeMm(channel, "foot"));
  working.let("w", widest, "mm", "flat width of the wider flange", "derived");
  working.compute("λ", "sqrt(F_y/(0.43*π^2*E/(12*(1 - 0.3^2))*(t/w)^2))", "1", "App. 1, Eq. 1.1-2");
  const whole = working.when("λ", "<=", "0.673", "App. 1, 1.2.1");
  working.compute("ρ", whole ? "1" : "(1 - 0.22/λ)/λ", "1", "App. 1, Eq. 1.1-3");
  working.compute("M_n", "ρ^3*S_y*F_y", "N·mm", "modulus cut as the cube of the flange left");
  return stateResistance(working, "M_n", "N·mm", flexureFactors, basis.method);
}
