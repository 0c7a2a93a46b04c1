import type { Steel } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** Two flanges that carry shear along their width; the narrower counts for both. `outstandMm` from the web to the tip. */
export type ShearedFlanges = {
  readonly name: string;
  readonly steel: Steel;
  readonly widthMm: number;
  readonly outstandMm: number;
  readonly thicknessMm: number;
};

/** Open shape in shear across its web, borne by its two flanges (G6, k_v 1.2), N. */
export function flangeShear(flanges: ShearedFlanges, basis: SteelBasis): Resistance {
  const working = openWorking("Shear across an open shape, in its flanges", aisc(basis, "G6"));
  letModulus(working);
  letYield(working, flanges.steel);
  working.let("b_f", flanges.widthMm, "mm", `flange width, ${flanges.name}`, "derived");
  working.let("b", flanges.outstandMm, "mm", "outstand", "derived");
  working.let("t_f", flanges.thicknessMm, "mm", "flange", "derived");
  working.let("k_v", 1.2, "1", "flange", "memory");
  if (working.when("b/t_f", "<=", "1.10*sqrt(k_v*E/F_y)", "G2.2(b)(1)")) working.compute("C_v", "1", "1");
  else if (working.when("b/t_f", "<=", "1.37*sqrt(k_v*E/F_y)", "G2.2(b)(2)"))
    working.compute("C_v", "1.10*sqrt(k_v*E/F_y)/(b/t_f)", "1", "Eq. G2-10");
  else working.compute("C_v", "1.51*k_v*E/((b/t_f)^2*F_y)", "1", "Eq. G2-11");
  working.compute("V_n", "2*0.6*F_y*b_f*t_f*C_v", "N", "Eq. G6-1, two flanges");
  return stateResistance(working, "V_n", "N", memberFactors, basis.method);
}
