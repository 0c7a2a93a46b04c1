import type { Steel } from "../../catalog/materials.ts";
import type { TubeSection } from "../../catalog/sections/section.ts";
import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, fullYieldFactors, letModulus, letYield, ruptureFactors, type SteelBasis } from "./steel-basis.ts";

/** A chord tube and how it is used: utilisation of the loaded face in compression, 0 where it is in tension. */
export type Chord = { readonly section: TubeSection; readonly steel: Steel; readonly useOfFace: number };

const plastification: StrengthFactors = { phi: 1, omega: 1.5, certainty: "memory" };

/** Square branch at right angles on the face of a chord (K3, chord plastification), N. Refused for β > 0.85. */
export function branchOnTube(
  chord: Chord,
  branch: { readonly widthMm: number; readonly alongChordMm: number },
  basis: SteelBasis,
): Resistance {
  const working = openWorking("Branch on the face of a tube", aisc(basis, "K3.2, chord plastification"));
  letChord(working, chord);
  working.let("B_b", branch.widthMm, "mm", "branch across the chord", "derived");
  working.let("H_b", branch.alongChordMm, "mm", "branch along the chord", "derived");
  working.compute("β", "B_b/B", "1");
  working.compute("η", "H_b/B", "1");
  if (!working.when("β", "<=", "0.85", "K3.2")) return refused("proportions outside the clause's limits");
  chordFactor(working, "1.3 - 0.4*U/β");
  working.compute("P_n", "F_y*t^2*(2*η/(1 - β) + 4/sqrt(1 - β))*Q_f", "N", "Eq. K3-7");
  return stateResistance(working, "P_n", "N", plastification, basis.method);
}

/** Plate along a chord's face (K2, plastification), N. */
export function platePlastification(
  chord: Chord,
  plate: { readonly thicknessMm: number; readonly alongChordMm: number },
  basis: SteelBasis,
): Resistance {
  const working = openWorking("Plate along the face of a tube", aisc(basis, "K2.3, plastification"));
  letChord(working, chord);
  working.let("t_p", plate.thicknessMm, "mm", "plate", "derived");
  working.let("l_b", plate.alongChordMm, "mm", "plate along the chord", "derived");
  if (!working.when("t_p/B", "<", "0.85", "K2.3")) return refused("proportions outside the clause's limits");
  working.compute("Q_f", "sqrt(1 - U^2)", "1", "Q_f, longitudinal plate");
  working.compute("P_n", "F_y*t^2/(1 - t_p/B)*(2*l_b/B + 4*sqrt(1 - t_p/B)*Q_f)", "N", "Eq. K2-3");
  return stateResistance(working, "P_n", "N", plastification, basis.method);
}

/** A force across the whole width of a tube, pressed into both side walls; mm. */
export type SideWallForce = { readonly bearingMm: number; readonly toEndMm: number };

/** Side walls yielding under a force across the whole width (J10.2 for two walls, k the outside corner), N. */
export function sideWallYielding(chord: Chord, force: SideWallForce, basis: SteelBasis): Resistance {
  const working = openWorking("Side walls of a tube, yielding", aisc(basis, "J10.2, two walls"));
  letChord(working, chord);
  letForce(working, force);
  working.let("k", 1.5 * chord.section.wallMm, "mm", "outside corner, at least 1.5 walls", "memory");
  const inside = working.when("x_e", ">", "H", "J10.2");
  working.compute("R_n", inside ? "2*F_y*t*(5*k + l_b)" : "2*F_y*t*(2.5*k + l_b)", "N", "Eq. J10-2, J10-3");
  return stateResistance(working, "R_n", "N", fullYieldFactors, basis.method);
}

/** Side walls crippling under a force across the whole width (J10.3 for two walls), N. */
export function sideWallCrippling(chord: Chord, force: SideWallForce, basis: SteelBasis): Resistance {
  const working = openWorking("Side walls of a tube, crippling", aisc(basis, "J10.3, two walls"));
  letModulus(working);
  letChord(working, chord);
  letForce(working, force);
  chordFactor(working, "1.3 - 0.4*U");
  const inside = working.when("x_e", ">=", "H/2", "J10.3");
  const factor = inside ? "1.6" : "0.8";
  working.compute("R_n", `${factor}*t^2*(1 + 3*l_b/(H - 3*t))*sqrt(E*F_y)*Q_f`, "N", "Eq. J10-4, J10-5, two walls");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

function letChord(working: OpenWorking, { section, steel, useOfFace }: Chord): void {
  const { certainty, source } = section;
  letYield(working, steel);
  working.let("B", section.widthMm, "mm", `width of the chord, ${section.name}`, certainty, source);
  working.let("H", section.depthMm, "mm", "depth of the chord", certainty, source);
  working.let("t", section.wallMm, "mm", "design wall", certainty, source);
  working.let("U", useOfFace, "1", "utilisation of the chord's face in compression", "derived");
}

function letForce(working: OpenWorking, force: SideWallForce): void {
  working.let("l_b", force.bearingMm, "mm", "length of bearing", "derived");
  working.let("x_e", force.toEndMm, "mm", "force to the member's end", "derived");
}

/** Q_f: 1 unless the loaded face is in compression, and never above 1 (K2, K3). */
function chordFactor(working: OpenWorking, inCompression: string): void {
  const compressed = working.when("U", ">", "0");
  working.compute("Q_f", compressed ? `min(1, ${inCompression})` : "1", "1", "Q_f");
}
