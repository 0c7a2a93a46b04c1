import type { Steel } from "../../catalog/materials.ts";
import type { ISection, TubeSection } from "../../catalog/sections/section.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisc, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** A base or cap plate, mm: N along the column's depth, B along its width, concentric. */
export type EndPlate = {
  readonly column: TubeSection | ISection;
  readonly steel: Steel;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
};

/**
 * Axial load a plate can spread in bending, N: even pressure on cantilevers from the lines 0.95 d and 0.95 b (tubes) or
 * 0.8 b_f with the yield lines between the flanges (I shapes). Method of AISC Design Guide 1 on F11, from memory.
 */
export function endPlateBending(plate: EndPlate, basis: SteelBasis): Resistance {
  const { column } = plate;
  const isI = column.kind === "I";
  const working = openWorking("Base plate in bending", aisc(basis, "F11, J8; Design Guide 1"));
  letYield(working, plate.steel);
  working.let("N", plate.lengthMm, "mm", "plate along the depth", "derived");
  working.let("B", plate.widthMm, "mm", "plate along the width", "derived");
  working.let("t_p", plate.thicknessMm, "mm", "plate thickness", "derived");
  working.let("d", column.depthMm, "mm", `depth, ${column.name}`, column.certainty, column.source);
  working.let("b", isI ? column.flangeWidthMm : column.widthMm, "mm", "width", column.certainty, column.source);
  working.compute("m", "(N - 0.95*d)/2", "mm");
  working.compute("n", isI ? "(B - 0.8*b)/2" : "(B - 0.95*b)/2", "mm");
  // λ is taken as 1, its largest value.
  working.compute("l", isI ? "max(m, n, sqrt(d*b)/4)" : "max(m, n)", "mm");
  working.compute("P_n", "F_y*t_p^2*B*N/(2*l^2)", "N", "M_n = F_y t²/4 over l²/2");
  return stateResistance(working, "P_n", "N", memberFactors, basis.method);
}

/** A plate on a member that presses on it evenly, mm: `lengthMm` along the member, `widthMm` pressed across it, under a part `pressedMm` long. */
export type SpreadingPlate = {
  readonly steel: Steel;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly pressedMm: number;
};

/**
 * What a plate spreads in bending over its length, N: even pressure on cantilevers from the edges of what presses on it, as under a
 * base plate, M_n = F_y t²/4 over n²/2 (F11). It must reach beyond that part.
 */
export function spreadingPlateBending(plate: SpreadingPlate, basis: SteelBasis): Resistance {
  const working = openWorking("Plate that spreads a force", aisc(basis, "F11"));
  letYield(working, plate.steel);
  working.let("L", plate.lengthMm, "mm", "plate along what it lies on", "derived");
  working.let("b", plate.widthMm, "mm", "of its width that is pressed", "derived");
  working.let("t", plate.thicknessMm, "mm", "plate and packing as one", "common practice");
  working.let("a", plate.pressedMm, "mm", "length of what comes down on it", "common practice");
  working.compute("n", "(L - a)/2", "mm");
  working.compute("P_n", "F_y*t^2*b*L/(2*n^2)", "N", "M_n = F_y t²/4 over n²/2");
  return stateResistance(working, "P_n", "N", memberFactors, basis.method);
}
