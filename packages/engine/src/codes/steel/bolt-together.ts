import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { boltGrades, type BoltGrade } from "./bolt.ts";
import { aisc, ruptureFactors, type SteelBasis } from "./steel-basis.ts";

/** Tension one bolt in a bearing-type joint still takes beside a shear (J3.7), N; `shearN` at the level of the method. */
export function boltTensionBesideShear(
  bolt: { readonly grade: BoltGrade; readonly diameterMm: number },
  shearN: number,
  basis: SteelBasis,
): Resistance {
  const grade = boltGrades[bolt.grade];
  const working = openWorking("Bolt in tension beside shear", aisc(basis, "J3.7"));
  working.let("F_nt", grade.tensionMpa, "MPa", `nominal stress in tension, ${bolt.grade}`, "memory", "Table J3.2");
  working.let("F_nv", grade.shearMpa, "MPa", `nominal stress in shear, ${bolt.grade}`, "memory", "Table J3.2");
  working.let("d", bolt.diameterMm, "mm", "diameter", "derived");
  working.let("V", Math.abs(shearN), "N", "required shear", "derived", "analysis");
  working.compute("A_b", "π*d^2/4", "mm²");
  working.compute("f_rv", "V/A_b", "MPa");
  const { phi, omega, certainty } = ruptureFactors;
  const lrfd = basis.method === "LRFD";
  working.let("c", lrfd ? 1 / phi : omega, "1", lrfd ? "1/φ" : "Ω", certainty);
  working.compute("F_ntv", "max(0, min(1.3*F_nt - c*F_nt/F_nv*f_rv, F_nt))", "MPa", "Eq. J3-3");
  working.compute("R_n", "F_ntv*A_b", "N", "Eq. J3-2");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}
