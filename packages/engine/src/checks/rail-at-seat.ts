import { steelModulus, poissonRatio } from "../catalog/materials.ts";
import type { CorrugatedSheet } from "../catalog/sections/corrugated-sheet.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import { demandAgainst, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";
import { foldStiffness } from "./sheet-shear/fold-stiffness.ts";

/**
 * A rail with its sheet under a force at one place: second moment about the level axis, mm⁴, and the force, N. Where a seat is
 * drawn its length along the rail, mm: it presses evenly. Without one the force stands on a knife's edge.
 */
export type RailAtSeat = {
  readonly element: Extract<CheckedElement, "top side rail" | "bottom side rail" | "front header" | "sill">;
  readonly railIMm4: number;
  readonly sheet: CorrugatedSheet;
  readonly forceN: number;
  readonly seatMm?: number;
};

/**
 * Local moment of a rail under a force at one place, N·mm: M = 0.50 P (E I/T)^⅓ with T = √(G t · E_v). Fitted to six
 * explicit fold models within 7 %; a smooth half-plane gives 0.385. Not in a model of strips, so it is checked apart. A load
 * spread over b is less: as a beam on an elastic bed with the same moment under a knife's edge, by e^−x sin x / x with
 * x = b/4ℓ (Hetényi, from memory), up to b = 6 ℓ, where its middle still decides.
 */
export function localRailMoment({ railIMm4, sheet, forceN, seatMm }: RailAtSeat): Working {
  const clause = {
    document: "fold models of this project",
    edition: "none",
    place: "rail on a folded sheet",
    certainty: "derived",
  } as const;
  const working = openWorking("Local moment of a rail at a seat", clause);
  const stiffness = foldStiffness(sheet, steelModulus.valueMpa, poissonRatio.value);
  working.let("P", Math.abs(forceN), "N", "force at one place", "derived", "analysis");
  working.let("E", steelModulus.valueMpa, "MPa", "modulus of elasticity", steelModulus.certainty);
  working.let("I", railIMm4, "mm⁴", "rail about its level axis", "derived");
  working.let("G_t", stiffness.shearNPerMm, "N/mm", "sheet in shear, G t w/s", "derived");
  working.let("E_v", stiffness.alongNPerMm, "N/mm", "sheet along its folds, E t s/w", "derived");
  working.compute("T", "sqrt(G_t*E_v)", "N/mm");
  if (seatMm === undefined) {
    working.compute("M", "0.50*P*cbrt(E*I/T)", "N·mm");
    return working.giving("M");
  }
  working.compute("l", "cbrt(E*I/T)", "mm");
  working.let("b", seatMm, "mm", "length of the seat along the rail, pressing evenly", "common practice", "as drawn");
  working.compute("x", "min(b, 6*l)/(4*l)", "1");
  working.compute("M", "0.50*P*l*exp(-x)*sin(x)/x", "N·mm", "Hetényi, load over a length b");
  return working.giving("M");
}

/** The local moment against the rail's strength in bending; the sheet holds the rail, so nothing twists between supports. */
export function railAtSeat(rail: RailAtSeat, strength: Resistance): Check {
  const subject = { element: rail.element, limitState: "local moment at a seat" } as const;
  return demandAgainst(subject, localRailMoment(rail), strength);
}
