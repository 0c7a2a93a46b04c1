import type { Steel } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, ruptureFactors, type SteelBasis } from "./steel-basis.ts";

const mpaPerKsi = 6.894757;

/** Nominal stresses of bolts (Table J3.2), MPa: shear with threads in the plane (N) or out of it (X), and tension. */
export const boltGrades = {
  "A325-N": { shearMpa: 54 * mpaPerKsi, tensionMpa: 90 * mpaPerKsi },
  "A325-X": { shearMpa: 68 * mpaPerKsi, tensionMpa: 90 * mpaPerKsi },
  "A490-N": { shearMpa: 68 * mpaPerKsi, tensionMpa: 113 * mpaPerKsi },
  "A490-X": { shearMpa: 84 * mpaPerKsi, tensionMpa: 113 * mpaPerKsi },
} as const;
export type BoltGrade = keyof typeof boltGrades;

/** One bolt in one shear plane, or in tension (J3.6), N. */
export function boltStrength(
  bolt: { readonly grade: BoltGrade; readonly diameterMm: number },
  force: "shear" | "tension",
  basis: SteelBasis,
): Resistance {
  const grade = boltGrades[bolt.grade];
  const working = openWorking(`Bolt in ${force}`, aisc(basis, "J3.6"));
  const stress = force === "shear" ? grade.shearMpa : grade.tensionMpa;
  working.let("F_nb", stress, "MPa", `nominal stress in ${force}, ${bolt.grade}`, "memory", "AISC 360 Table J3.2");
  working.let("d", bolt.diameterMm, "mm", "diameter", "derived");
  working.compute("A_b", "π*d^2/4", "mm²");
  working.compute("R_n", "F_nb*A_b", "N", "Eq. J3-1");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

/** A bolt bearing on a part; `clearMm` is the clear distance to the edge or the next hole along the force. */
export type BoltBearing = {
  readonly steel: Steel;
  readonly diameterMm: number;
  readonly thicknessMm: number;
  readonly clearMm: number;
};

/** Bearing and tear-out at one hole (J3.10, hole deformation considered), N. */
export function boltBearing(bearing: BoltBearing, basis: SteelBasis): Resistance {
  const { steel } = bearing;
  const working = openWorking("Bearing and tear-out at a bolt hole", aisc(basis, "J3.10, J3.11"));
  working.let("F_u", steel.fuMpa, "MPa", `tensile strength, ${steel.name}`, steel.certainty, steel.source);
  working.let("d", bearing.diameterMm, "mm", "bolt diameter", "derived");
  working.let("t", bearing.thicknessMm, "mm", "thickness", "derived");
  working.let("l_c", bearing.clearMm, "mm", "clear distance", "derived");
  working.compute("R_n", "min(2.4*d*t*F_u, 1.2*l_c*t*F_u)", "N", "Eq. J3-6a, J3-6c");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}
