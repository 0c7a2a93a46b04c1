import type { Steel } from "../../catalog/materials.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, ruptureFactors, type SteelBasis } from "./steel-basis.ts";

/** A line of fillet weld. Sizes mm; `angleDegree` between the force and the weld's line, 0 along it, 90 across. */
export type FilletWeld = {
  readonly legMm: number;
  readonly lengthMm: number;
  readonly angleDegree: number;
  readonly electrodeMpa: number;
  /** The thinner part joined: it sets the least leg and may shear beside the weld. */
  readonly thinner: { readonly thicknessMm: number; readonly steel: Steel };
  /** Force enters at the end of the weld along its line. */
  readonly endLoaded: boolean;
  /** Weld to the end of a rectangular tube: no increase for direction (2022 edition; K5 in the 2016 one). */
  readonly tubeEnd: boolean;
};

/** Strength of a fillet weld, N: the weld's throat and the part beside it (J2.4), long welds reduced (J2.2b). */
export function filletWeld(weld: FilletWeld, basis: SteelBasis): Resistance {
  if (weld.legMm < leastFilletLegMm(weld.thinner.thicknessMm)) return refused("weld smaller than the least size");
  const working = openWorking("Strength of a fillet weld", aisc(basis, "J2.2b, J2.4"));
  working.let("F_EXX", weld.electrodeMpa, "MPa", "electrode strength", "memory");
  working.let("w", weld.legMm, "mm", "leg", "derived");
  working.let("L", weld.lengthMm, "mm", "length", "derived");
  working.let("θ", weld.angleDegree, "degree", "force to weld line", "derived");
  effectiveLength(working, weld.endLoaded);
  working.compute("k_ds", weld.tubeEnd ? "1" : "1 + 0.5*max(0, sin(θ*π/180))^1.5", "1", "Eq. J2-5");
  working.compute("R_weld", "0.6*F_EXX*k_ds*0.707*w*L_e", "N", "Eq. J2-4");
  const { steel, thicknessMm } = weld.thinner;
  working.let("F_u", steel.fuMpa, "MPa", `tensile strength, ${steel.name}`, steel.certainty, steel.source);
  working.let("t", thicknessMm, "mm", "thinner part", "derived");
  working.compute("R_base", "0.6*F_u*t*L_e", "N", "Eq. J4-4");
  working.compute("R_n", "min(R_weld, R_base)", "N");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

/** Least leg by the thinner part (Table J2.4), mm. From memory. */
export function leastFilletLegMm(thinnerMm: number): number {
  if (thinnerMm <= 6) return 3;
  if (thinnerMm <= 13) return 5;
  return thinnerMm <= 19 ? 6 : 8;
}

function effectiveLength(working: OpenWorking, endLoaded: boolean): void {
  if (!endLoaded || working.when("L", "<=", "100*w", "J2.2b(d)")) {
    working.compute("L_e", "L", "mm");
    return;
  }
  if (working.when("L", "<=", "300*w", "J2.2b(d)")) {
    working.compute("β", "min(1, 1.2 - 0.002*L/w)", "1", "Eq. J2-1");
    working.compute("L_e", "β*L", "mm");
    return;
  }
  working.compute("L_e", "180*w", "mm", "J2.2b(d)");
}
