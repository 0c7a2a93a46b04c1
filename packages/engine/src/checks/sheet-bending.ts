import { steelModulus, type Steel } from "../catalog/materials.ts";
import type { CorrugatedSheet } from "../catalog/sections/corrugated-sheet.ts";
import { aisi, flexureFactors, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { letYield } from "../codes/steel/steel-basis.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";

/**
 * Folded sheet bent out of its plane, spanning along the folds, N·mm per mm of width (AISI S100 F3.1): first yield, with
 * the modulus cut by what the wider flat loses evenly pressed (k 4); both faces are cut, so either may be pressed.
 */
export function sheetBending(sheet: CorrugatedSheet, steel: Steel, basis: ColdFormedBasis): Resistance {
  const working = openWorking("Sheet bent out of its plane", aisi(basis, "F3.1; Appendix 1, 1.1"));
  working.let("E", steelModulus.valueMpa, "MPa", "modulus of elasticity", steelModulus.certainty);
  letYield(working, steel);
  const generic = "generic purchase specifications";
  working.let("t", sheet.thicknessMm, "mm", "sheet", "common practice", generic);
  working.let("w", Math.max(sheet.outerFlatMm, sheet.innerFlatMm), "mm", "wider flat", "common practice", generic);
  working.let("d", sheet.depthMm, "mm", "depth between the flats' centrelines", "common practice", generic);
  working.let("p", sheet.pitchMm, "mm", "pitch", "common practice", generic);
  working.let("S", sheet.sMm3PerMm, "mm³/mm", "gross modulus per width", "derived");
  working.compute("λ", "sqrt(F_y/(4*π^2*E/(12*(1 - 0.3^2))*(t/w)^2))", "1", "App. 1, Eq. 1.1-2");
  const whole = working.when("λ", "<=", "0.673", "App. 1, 1.1");
  working.compute("ρ", whole ? "1" : "(1 - 0.22/λ)/λ", "1", "App. 1, Eq. 1.1-3");
  // Both flats cut: I falls by 2 (1 − ρ) w t (d/2)²; S is that over the unchanged half depth.
  working.compute("S_e", "S - 2*(1 - ρ)*w*t*(d/2)^2/(p*(d/2 + t/2))", "mm³/mm");
  working.compute("M_n", "S_e*F_y", "N·mm/mm", "Eq. F3.1-1");
  return stateResistance(working, "M_n", "N·mm/mm", flexureFactors, basis.method);
}
