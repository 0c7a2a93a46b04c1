import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letModulus, letYield } from "../steel/steel-basis.ts";
import { asChannel, flatFlangeMm, flatWebMm } from "./channel-member.ts";
import { aisi, compressionFactors, type ColdFormedBasis } from "./cold-formed-basis.ts";
import { elasticColumn, type BucklingLengths } from "./elastic-column.ts";

export type PressedColumn = {
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly lengths: BucklingLengths;
};

/** Unlipped channel in compression, N: global buckling (E2) with local buckling (E3.1, Appendix 1). */
export function pressedCompression(column: PressedColumn, basis: ColdFormedBasis): Resistance {
  const channel = asChannel(column.section, column.steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const { section } = column;
  const working = openWorking("Pressed channel in compression", aisi(basis, "E2, E3.1; Appendix 1"));
  letModulus(working);
  letYield(working, column.steel);
  working.let("A_g", section.areaMm2, "mm²", `gross area, ${section.name}`, section.certainty, section.source);
  letElasticStress(working, section, column.lengths);
  globalStress(working);
  const t = section.thicknessMm;
  working.let("t", t, "mm", "thickness", section.certainty, section.source);
  const losses = [
    evenElement(working, { mark: "w", meaning: "web", widthMm: flatWebMm(channel), k: 4 }),
    evenElement(working, { mark: "h", meaning: "head flange", widthMm: flatFlangeMm(channel, "head"), k: 0.43 }),
    evenElement(working, { mark: "f", meaning: "foot flange", widthMm: flatFlangeMm(channel, "foot"), k: 0.43 }),
  ];
  working.compute("A_e", ["A_g", ...losses].join(" - "), "mm²");
  working.compute("P_n", "A_e*F_n", "N", "Eq. E3.1-1");
  return stateResistance(working, "P_n", "N", compressionFactors, basis.method);
}

/** Records F_cre, the least elastic buckling stress, with the parts it is made of. */
export function letElasticStress(working: OpenWorking, section: PressedSection, lengths: BucklingLengths): void {
  const elastic = elasticColumn(section, lengths);
  working.let("σ_ex", elastic.strongMpa, "MPa", "Euler stress, strong principal axis", "derived");
  working.let("σ_ey", elastic.weakMpa, "MPa", "Euler stress, weak principal axis", "derived");
  working.let("σ_t", elastic.twistMpa, "MPa", "stress of buckling by twist alone", "derived");
  working.let("x_0", elastic.alongStrongMm, "mm", "shear centre from centroid, along the strong axis", "derived");
  working.let("y_0", elastic.alongWeakMm, "mm", "shear centre from centroid, along the weak axis", "derived");
  working.let("r_0", elastic.r0Mm, "mm", "polar radius about the shear centre", "derived");
  working.let("F_cre", elastic.leastMpa, "MPa", "least root of the flexural-torsional equation", "derived");
  working.compute(
    "rest",
    "((F_cre - σ_ex)*(F_cre - σ_ey)*(F_cre - σ_t) - F_cre^2*((F_cre - σ_ey)*(x_0/r_0)^2 + (F_cre - σ_ex)*(y_0/r_0)^2))/(σ_ex*σ_ey*σ_t)",
    "1",
    "Appendix 2, 2.3.1.1: zero at the root",
  );
}

/** Records F_n from F_cre and F_y (E2). */
export function globalStress(working: OpenWorking): void {
  working.compute("λ_c", "sqrt(F_y/F_cre)", "1", "Eq. E2-4");
  const inelastic = working.when("λ_c", "<=", "1.5", "E2");
  working.compute(
    "F_n",
    inelastic ? "0.658^(λ_c^2)*F_y" : "0.877/λ_c^2*F_y",
    "MPa",
    inelastic ? "Eq. E2-2" : "Eq. E2-3",
  );
}

type EvenElement = { readonly mark: string; readonly meaning: string; readonly widthMm: number; readonly k: number };

/** Records what an evenly pressed flat element loses at F_n; gives the symbol of the lost area. */
function evenElement(working: OpenWorking, { mark, meaning, widthMm, k }: EvenElement): string {
  working.let(`w_${mark}`, widthMm, "mm", `flat width, ${meaning}`, "derived");
  working.compute(`λ_${mark}`, `sqrt(F_n/(${k}*π^2*E/(12*(1 - 0.3^2))*(t/w_${mark})^2))`, "1", "App. 1, Eq. 1.1-2");
  const whole = working.when(`λ_${mark}`, "<=", "0.673", "App. 1, 1.1");
  working.compute(`ρ_${mark}`, whole ? "1" : `(1 - 0.22/λ_${mark})/λ_${mark}`, "1", "App. 1, Eq. 1.1-3");
  working.compute(`A_${mark}`, `(1 - ρ_${mark})*w_${mark}*t`, "mm²");
  return `A_${mark}`;
}
