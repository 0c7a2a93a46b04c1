import type { Steel } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, letModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** A flat plate bent in its own plane, mm; `unbracedMm` between what holds its pressed edge sideways. */
export type FlatPlate = {
  readonly steel: Steel;
  readonly depthMm: number;
  readonly thicknessMm: number;
  readonly unbracedMm: number;
};

/** Flexure of a rectangular bar about its strong axis (F11), N·mm; C_b is taken as 1. */
export function flatPlateFlexure(plate: FlatPlate, basis: SteelBasis): Resistance {
  const working = openWorking("Flat plate in bending", aisc(basis, "F11"));
  letModulus(working);
  letYield(working, plate.steel);
  working.let("d", plate.depthMm, "mm", "depth in the plane of bending", "derived");
  working.let("t", plate.thicknessMm, "mm", "thickness", "derived");
  working.let("L_b", plate.unbracedMm, "mm", "unbraced length", "derived");
  working.compute("M_p", "min(F_y*t*d^2/4, 1.5*F_y*t*d^2/6)", "N·mm", "Eq. F11-1");
  working.compute("s", "L_b*d/t^2", "1");
  working.compute("M_n", formula(working), "N·mm", "Eq. F11-1 to F11-4");
  return stateResistance(working, "M_n", "N·mm", memberFactors, basis.method);
}

function formula(working: ReturnType<typeof openWorking>): string {
  if (working.when("s", "<=", "0.08*E/F_y", "F11.1")) return "M_p";
  return working.when("s", "<=", "1.9*E/F_y", "F11.2(a)")
    ? "min(M_p, (1.52 - 0.274*s*F_y/E)*F_y*t*d^2/6)"
    : "min(M_p, 1.9*E/s*t*d^2/6)";
}
