import type { Steel } from "../../catalog/materials.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import {
  aisc,
  fullYieldFactors,
  letModulus,
  letYield,
  memberFactors,
  ruptureFactors,
  type SteelBasis,
} from "./steel-basis.ts";

/** Shear yielding of a plate (J4.2(a)), N. */
export function plateShearYielding(steel: Steel, grossMm2: number, basis: SteelBasis): Resistance {
  const working = openWorking("Plate, shear yielding", aisc(basis, "J4.2(a)"));
  letYield(working, steel);
  working.let("A_gv", grossMm2, "mm²", "gross area in shear", "derived");
  working.compute("R_n", "0.6*F_y*A_gv", "N", "Eq. J4-3");
  return stateResistance(working, "R_n", "N", fullYieldFactors, basis.method);
}

/** Shear rupture of a plate (J4.2(b)), N. */
export function plateShearRupture(steel: Steel, netMm2: number, basis: SteelBasis): Resistance {
  const working = openWorking("Plate, shear rupture", aisc(basis, "J4.2(b)"));
  letTensile(working, steel);
  working.let("A_nv", netMm2, "mm²", "net area in shear", "derived");
  working.compute("R_n", "0.6*F_u*A_nv", "N", "Eq. J4-4");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

/** Areas of a block that may tear out, mm², and U_bs: 1 for even tension, 0.5 otherwise. */
export type TearBlock = {
  readonly grossShearMm2: number;
  readonly netShearMm2: number;
  readonly netTensionMm2: number;
  readonly evenTension: boolean;
};

/** Block shear (J4.3), N. */
export function blockShear(steel: Steel, block: TearBlock, basis: SteelBasis): Resistance {
  const working = openWorking("Block shear", aisc(basis, "J4.3"));
  letYield(working, steel);
  letTensile(working, steel);
  working.let("A_gv", block.grossShearMm2, "mm²", "gross area in shear", "derived");
  working.let("A_nv", block.netShearMm2, "mm²", "net area in shear", "derived");
  working.let("A_nt", block.netTensionMm2, "mm²", "net area in tension", "derived");
  working.let("U_bs", block.evenTension ? 1 : 0.5, "1", "evenness of the tension", "memory");
  working.compute("R_n", "min(0.6*F_u*A_nv, 0.6*F_y*A_gv) + U_bs*F_u*A_nt", "N", "Eq. J4-5");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

/** A short plate pressed along its length: section, mm, and effective length K·L, mm. */
export type PressedPlate = {
  readonly steel: Steel;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly effectiveLengthMm: number;
};

/** Connecting plate in compression (J4.4), N: yield up to a slenderness of 25, beyond it E3 with r = t/√12. */
export function plateCompression(plate: PressedPlate, basis: SteelBasis): Resistance {
  const working = openWorking("Plate in compression", aisc(basis, "J4.4"));
  letModulus(working);
  letYield(working, plate.steel);
  working.let("b", plate.widthMm, "mm", "width", "derived");
  working.let("t", plate.thicknessMm, "mm", "thickness", "derived");
  working.let("L_c", plate.effectiveLengthMm, "mm", "effective length", "derived");
  working.compute("slenderness", "L_c/(t/sqrt(12))", "1");
  criticalStress(working);
  working.compute("P_n", "F_cr*b*t", "N", "Eq. J4-6");
  return stateResistance(working, "P_n", "N", memberFactors, basis.method);
}

function criticalStress(working: OpenWorking): void {
  if (working.when("slenderness", "<=", "25", "J4.4(a)")) {
    working.compute("F_cr", "F_y", "MPa");
    return;
  }
  working.compute("F_e", "π^2*E/slenderness^2", "MPa", "Eq. E3-4");
  const inelastic = working.when("F_y/F_e", "<=", "2.25", "E3(a)");
  working.compute("F_cr", inelastic ? "0.658^(F_y/F_e)*F_y" : "0.877*F_e", "MPa", inelastic ? "Eq. E3-2" : "Eq. E3-3");
}

function letTensile(working: OpenWorking, steel: Steel): void {
  working.let("F_u", steel.fuMpa, "MPa", `tensile strength, ${steel.name}`, steel.certainty, steel.source);
}
