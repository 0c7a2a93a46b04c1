import type { Steel } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, letYield, memberFactors, ruptureFactors, type SteelBasis } from "./steel-basis.ts";

/** A part in tension: gross area and effective net area, mm² (equal where no hole is made and the whole end is held). */
export type TensionPart = { readonly steel: Steel; readonly grossMm2: number; readonly effectiveNetMm2: number };

/** Yielding of the gross section (D2, J4.1), N. */
export function tensionYielding(part: TensionPart, basis: SteelBasis): Resistance {
  const working = openWorking("Tension, yielding of the gross section", aisc(basis, "D2(a), J4.1(a)"));
  letYield(working, part.steel);
  working.let("A_g", part.grossMm2, "mm²", "gross area", "derived");
  working.compute("P_n", "F_y*A_g", "N", "Eq. D2-1");
  return stateResistance(working, "P_n", "N", memberFactors, basis.method);
}

/** Rupture of the net section (D2, J4.1), N. */
export function tensionRupture(part: TensionPart, basis: SteelBasis): Resistance {
  const { steel } = part;
  const working = openWorking("Tension, rupture of the net section", aisc(basis, "D2(b), J4.1(b)"));
  working.let("F_u", steel.fuMpa, "MPa", `tensile strength, ${steel.name}`, steel.certainty, steel.source);
  working.let("A_e", part.effectiveNetMm2, "mm²", "effective net area", "derived");
  working.compute("P_n", "F_u*A_e", "N", "Eq. D2-2");
  return stateResistance(working, "P_n", "N", ruptureFactors, basis.method);
}
