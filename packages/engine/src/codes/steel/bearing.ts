import type { Steel } from "../../catalog/materials.ts";
import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, letYield, ruptureFactors, type SteelBasis } from "./steel-basis.ts";

/** Milled or fitted steel surfaces pressed on each other (J7), N. */
export function steelBearing(steel: Steel, areaMm2: number, basis: SteelBasis): Resistance {
  const working = openWorking("Steel bearing on steel", aisc(basis, "J7"));
  letYield(working, steel);
  working.let("A_pb", areaMm2, "mm²", "bearing area", "derived");
  working.compute("R_n", "1.8*F_y*A_pb", "N", "Eq. J7-1");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

/** Steel on concrete: loaded area A_1, largest similar area A_2 on the support (mm²), concrete strength f'c, MPa. */
export type ConcreteBearing = {
  readonly loadedMm2: number;
  readonly supportMm2: number;
  readonly concreteMpa: number;
};

/** φ and Ω of bearing on concrete (AISC 360 J8). */
const concreteFactors: StrengthFactors = { phi: 0.65, omega: 2.31, certainty: "memory" };

/** Bearing on concrete (J8), N. Refused when the support is smaller than the loaded area. */
export function concreteBearing(bearing: ConcreteBearing, basis: SteelBasis): Resistance {
  if (bearing.supportMm2 < bearing.loadedMm2) return refused("part bears beyond its edge");
  const working = openWorking("Bearing on concrete", aisc(basis, "J8"));
  working.let("f_c", bearing.concreteMpa, "MPa", "concrete strength", "derived");
  working.let("A_1", bearing.loadedMm2, "mm²", "loaded area", "derived");
  working.let("A_2", bearing.supportMm2, "mm²", "largest similar area on the support", "derived");
  working.compute("P_n", "min(0.85*f_c*A_1*sqrt(A_2/A_1), 1.7*f_c*A_1)", "N", "Eq. J8-1, J8-2");
  return stateResistance(working, "P_n", "N", concreteFactors, basis.method);
}
