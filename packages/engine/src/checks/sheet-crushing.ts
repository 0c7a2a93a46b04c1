import { poissonRatio, steelModulus, type Steel } from "../catalog/materials.ts";
import type { CorrugatedSheet } from "../catalog/sections/corrugated-sheet.ts";
import { letYield } from "../codes/steel/steel-basis.ts";
import { availableStrength, type DesignMethod, type StrengthFactors } from "../working/design-method.ts";
import { openWorking, type OpenWorking } from "../working/open-working.ts";
import { checkOf, type Check } from "./check.ts";
import { foldStiffness } from "./sheet-shear/fold-stiffness.ts";

/** A whole sheet pressed through its rail at one place, N, over `bearingMm` of it; `heightMm` along the folds to the far rail. */
export type PressedSheet = {
  readonly element: "side sheet" | "end sheet";
  readonly sheet: CorrugatedSheet;
  readonly steel: Steel;
  readonly railIMm4: number;
  readonly heightMm: number;
  readonly bearingMm: number;
  readonly forceN: number;
};

const clause = {
  document: "rational analysis",
  edition: "none",
  place: "sheet under a rail pressed at one place",
  certainty: "common practice",
} as const;

/** Judgement, as for the sheet in shear. */
const judgedFactors: StrengthFactors = { phi: 0.9, omega: 1.67, certainty: "common practice" };

/**
 * Sheet crushed under a seat, bounded. Peak line load p = 0.50 P/ℓ, ℓ = (E I/T)^⅓ (0.385 for a smooth half-plane, raised
 * as the rail's moment is by explicit folds) under a knife's edge, and less where it bears over a length b: as a beam on an
 * elastic bed of the same peak, P (1 − e^(−b/2ℓ) cos(b/2ℓ))/b (Hetényi, from memory). It stands half the depth of the folds
 * off their middle. At mid height the
 * load has spread to 2P/(π h/2), where the sheet may buckle as a strip pinned at both rails.
 */
export function sheetCrushing(pressed: PressedSheet, method: DesignMethod): Check {
  const working = openWorking("Sheet crushed under a seat", clause);
  letYield(working, pressed.steel);
  letSheet(working, pressed);
  working.compute("l", "cbrt(E*I/sqrt(G_t*E_v))", "mm");
  working.compute("β", "2*0.50/l", "1/mm", "of the bed, for a peak of 0.50 P/ℓ under a knife's edge");
  working.compute("p", "P*(1 - exp(-β*b/2)*cos(β*b/2))/b", "N/mm", "Hetényi, load over a length b");
  working.compute("λ", "sqrt(F_y/(4*π^2*E/(12*(1 - 0.3^2))*(t/a)^2))", "1", "AISI S100 App. 1, Eq. 1.1-2");
  const whole = working.when("λ", "<=", "0.673");
  working.compute("ρ", whole ? "1" : "(1 - 0.22/λ)/λ", "1", "AISI S100 App. 1, Eq. 1.1-3");
  working.compute("n_e", "ρ*A*F_y", "N/mm", "squash");
  working.compute("m_e", "ρ*S*F_y", "N·mm/mm", "first yield in bending");
  working.compute("edge", "p/n_e + p*d/2/m_e", "1", "at the rail, d/2 off the middle");
  working.compute("n_b", "min(π^2*E*I_s/h^2, n_e)", "N/mm", "strip from rail to rail");
  working.compute("middle", "2*P/(π*h/2)/n_b", "1", "at mid height");
  working.compute("ratio", "max(edge, middle)", "1");
  working.let("one", 1, "1", "all of it", "derived");
  availableStrength(working, "limit", "one", "1", judgedFactors, method);
  working.note("Needs the sheet whole below the seat; the bound rests on judgement, no code clause covers it.");
  return checkOf(
    { element: pressed.element, limitState: "sheet crushing under a seat" },
    working.against("ratio", "limit"),
  );
}

function letSheet(working: OpenWorking, { sheet, railIMm4, heightMm, bearingMm, forceN }: PressedSheet): void {
  const stiffness = foldStiffness(sheet, steelModulus.valueMpa, poissonRatio.value);
  const generic = "generic purchase specifications";
  working.let("P", Math.abs(forceN), "N", "force at one place", "derived", "analysis");
  working.let("E", steelModulus.valueMpa, "MPa", "modulus of elasticity", steelModulus.certainty);
  working.let("I", railIMm4, "mm⁴", "rail about its level axis", "derived");
  working.let("G_t", stiffness.shearNPerMm, "N/mm", "sheet in shear, G t w/s", "derived");
  working.let("E_v", stiffness.alongNPerMm, "N/mm", "sheet along its folds, E t s/w", "derived");
  working.let("t", sheet.thicknessMm, "mm", "sheet", "common practice", generic);
  working.let("a", sheet.widestFoldMm, "mm", "widest fold", "common practice", generic);
  working.let("d", sheet.depthMm, "mm", "depth of the folds", "common practice", generic);
  working.let("A", sheet.areaMm2PerMm, "mm²/mm", "area per width", "derived");
  working.let("S", sheet.sMm3PerMm, "mm³/mm", "modulus per width", "derived");
  working.let("I_s", sheet.iMm4PerMm, "mm⁴/mm", "second moment per width", "derived");
  working.let("b", bearingMm, "mm", "length that bears", "common practice");
  working.let("h", heightMm, "mm", "height along the folds", "derived");
}
