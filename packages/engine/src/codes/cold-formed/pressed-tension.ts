import type { Steel } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letYield } from "../steel/steel-basis.ts";
import { aisi, flexureFactors, type ColdFormedBasis } from "./cold-formed-basis.ts";

/** Yielding of a pressed member in tension, no holes (D2), N. φ and Ω are those of bending. */
export function pressedTension(
  member: { readonly section: { readonly areaMm2: number; readonly name: string }; readonly steel: Steel },
  basis: ColdFormedBasis,
): Resistance {
  const working = openWorking("Pressed member in tension", aisi(basis, "D2"));
  letYield(working, member.steel);
  working.let("A_g", member.section.areaMm2, "mm²", `gross area, ${member.section.name}`, "derived");
  working.compute("T_n", "A_g*F_y", "N", "Eq. D2-1");
  return stateResistance(working, "T_n", "N", flexureFactors, basis.method);
}
