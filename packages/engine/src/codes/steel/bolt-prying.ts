import type { Steel } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { memberFactors, type SteelBasis } from "./steel-basis.ts";

/** A plate or flange that a pulled bolt bends, mm: from the bolt's line to the face that holds it, and how much of it one bolt has. */
export type PulledPlate = {
  readonly steel: Steel;
  readonly thicknessMm: number;
  readonly boltMm: number;
  readonly toFaceMm: number;
  readonly tributaryMm: number;
};

/**
 * Pull of one bolt up to which its plate is stiff enough that it pries the bolt no further, N: t_np = √(4 T b′/(φ p F_u)), solved
 * for T. AISC Manual, 15th edition, Part 9, from memory. Throws a RangeError for a bolt whose edge is not clear of the face.
 */
export function pullWithoutPrying(plate: PulledPlate, basis: SteelBasis): Resistance {
  const { steel, boltMm, toFaceMm } = plate;
  if (toFaceMm <= boltMm / 2) throw new RangeError(`a bolt of ${boltMm} mm is not clear of a face ${toFaceMm} mm off`);
  const working = openWorking("Pull of a bolt without prying", {
    document: "AISC Manual",
    edition: "15th",
    place: "Part 9, prying action",
    certainty: "memory",
  });
  working.let("F_u", steel.fuMpa, "MPa", `tensile strength, ${steel.name}`, steel.certainty, steel.source);
  working.let("t", plate.thicknessMm, "mm", "thickness", "derived");
  working.let("d", boltMm, "mm", "bolt diameter", "derived");
  working.let("b", toFaceMm, "mm", "line of the bolts to the face that holds", "derived");
  working.let("s", plate.tributaryMm, "mm", "between bolts along the line", "common practice");
  working.compute("b_1", "b - d/2", "mm");
  working.compute("p", "min(s, 2*b)", "mm", "length of plate to one bolt");
  working.compute("T_n", "p*F_u*t^2/(4*b_1)", "N", "thickness that takes no prying, solved for T");
  return stateResistance(working, "T_n", "N", memberFactors, basis.method);
}
