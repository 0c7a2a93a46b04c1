import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import { openWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letModulus, letYield } from "../steel/steel-basis.ts";
import { asChannel, flatWebMm } from "./channel-member.ts";
import { aisi, shearFactors, type ColdFormedBasis } from "./cold-formed-basis.ts";
import { webShear } from "./web-shear.ts";

/** Web of a pressed channel in shear, no stiffeners (G2.1, G2.3), N. */
export function pressedShear(
  member: { readonly section: PressedSection; readonly steel: Steel },
  basis: ColdFormedBasis,
): Resistance {
  const channel = asChannel(member.section, member.steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const { section } = member;
  const working = openWorking("Pressed channel in shear", aisi(basis, "G2.1"));
  letModulus(working);
  letYield(working, member.steel);
  working.let(
    "h",
    flatWebMm(channel),
    "mm",
    `flat depth of the web, ${section.name}`,
    section.certainty,
    section.source,
  );
  working.let("t", section.thicknessMm, "mm", "thickness", section.certainty, section.source);
  working.let("k_v", 5.34, "1", "web without stiffeners", "memory");
  working.compute("V_y", "0.6*h*t*F_y", "N", "Eq. G2.1-5");
  working.compute("V_cr", "h*t*π^2*E*k_v/(12*(1 - 0.3^2)*(h/t)^2)", "N", "Eq. G2.3-1, G2.3-2");
  webShear(working);
  return stateResistance(working, "V_n", "N", shearFactors, basis.method);
}
