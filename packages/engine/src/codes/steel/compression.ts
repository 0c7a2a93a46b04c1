import type { Steel } from "../../catalog/materials.ts";
import type { ChannelSection, ISection, Section, TubeSection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { effectiveArea } from "./effective-area.ts";
import { aisc, letModulus, letShearModulus, letYield, memberFactors, type SteelBasis } from "./steel-basis.ts";

/** Effective lengths about the strong axis, the weak axis and for twist, mm; each > 0. */
export type ColumnLengths = { readonly xMm: number; readonly yMm: number; readonly twistMm: number };

export type Column = { readonly section: Section; readonly steel: Steel; readonly lengths: ColumnLengths };

/**
 * Strength in compression, N: flexural buckling (E3), torsional or flexural-torsional buckling (E4) and slender elements
 * (E7). Angles and pressed sections are refused.
 */
export function compression(column: Column, basis: SteelBasis): Resistance {
  const { section, steel, lengths } = column;
  if (section.kind === "angle" || section.kind === "pressed") return refused("shape not covered by this check");
  const working = openWorking("Strength in compression", aisc(basis, "E3, E4, E7"));
  letModulus(working);
  letYield(working, steel);
  letSection(working, section);
  elasticStress(working, section, lengths);
  criticalStress(working);
  effectiveArea(working, section);
  working.compute("P_n", "F_cr*A_e", "N", "Eq. E3-1, E7-1");
  return stateResistance(working, "P_n", "N", memberFactors, basis.method);
}

type CoveredSection = TubeSection | ISection | ChannelSection;

function letSection(working: OpenWorking, section: CoveredSection): void {
  const { certainty, source, name } = section;
  working.let("A_g", section.areaMm2, "mm²", `gross area, ${name}`, certainty, source);
  working.let("r_x", section.rxMm, "mm", "radius of gyration, strong axis", certainty, source);
  working.let("r_y", section.ryMm, "mm", "radius of gyration, weak axis", certainty, source);
}

/** Elastic buckling stress F_e: the least of the modes the shape has. */
function elasticStress(working: OpenWorking, section: CoveredSection, lengths: ColumnLengths): void {
  working.let("L_cx", lengths.xMm, "mm", "effective length, strong axis", "derived");
  working.let("L_cy", lengths.yMm, "mm", "effective length, weak axis", "derived");
  working.compute("F_ex", "π^2*E/(L_cx/r_x)^2", "MPa", "Eq. E3-4");
  working.compute("F_ey", "π^2*E/(L_cy/r_y)^2", "MPa", "Eq. E3-4");
  if (section.kind === "tube") {
    working.compute("F_e", "min(F_ex, F_ey)", "MPa");
    return;
  }
  letShearModulus(working);
  letTwist(working, section, lengths.twistMm);
  if (section.kind === "I") {
    working.compute("F_ez", "(π^2*E*C_w/L_cz^2 + G*J)/(I_x + I_y)", "MPa", "Eq. E4-2");
    working.compute("F_e", "min(F_ex, F_ey, F_ez)", "MPa");
    return;
  }
  channelTwist(working, section);
}

function letTwist(working: OpenWorking, section: ISection | ChannelSection, twistMm: number): void {
  const { certainty, source } = section;
  working.let("L_cz", twistMm, "mm", "effective length, twist", "derived");
  working.let("I_x", section.ixMm4, "mm⁴", "second moment, strong axis", certainty, source);
  working.let("I_y", section.iyMm4, "mm⁴", "second moment, weak axis", certainty, source);
  working.let("J", section.jMm4, "mm⁴", "torsion constant", certainty, source);
  working.let("C_w", section.cwMm6, "mm⁶", "warping constant", certainty, source);
}

/** A channel is symmetric about its strong axis, so bending about that axis couples with twist (E4-3). */
function channelTwist(working: OpenWorking, section: ChannelSection): void {
  working.let("x_0", channelShearCentre(section), "mm", "shear centre from centroid", "derived", "thin-walled formula");
  working.compute("r_0", "sqrt(x_0^2 + (I_x + I_y)/A_g)", "mm", "Eq. E4-9");
  working.compute("H", "1 - x_0^2/r_0^2", "1", "Eq. E4-8");
  working.compute("F_ez", "(π^2*E*C_w/L_cz^2 + G*J)/(A_g*r_0^2)", "MPa", "Eq. E4-7");
  working.compute(
    "F_ext",
    "(F_ex + F_ez)/(2*H)*(1 - sqrt(1 - 4*F_ex*F_ez*H/(F_ex + F_ez)^2))",
    "MPa",
    "Eq. E4-3, symmetric about x",
  );
  working.compute("F_e", "min(F_ey, F_ext)", "MPa");
}

/** Distance of the shear centre from the centroid: e = 3 b² t_f/(6 b t_f + h t_w) behind the web's centreline. Derived. */
export function channelShearCentre(section: ChannelSection): number {
  const b = section.flangeWidthMm - section.webMm / 2;
  const h = section.depthMm - section.flangeMm;
  const behindWeb = (3 * b * b * section.flangeMm) / (6 * b * section.flangeMm + h * section.webMm);
  return behindWeb + section.centroidFromBackMm - section.webMm / 2;
}

function criticalStress(working: OpenWorking): void {
  const inelastic = working.when("F_y/F_e", "<=", "2.25", "E3(a)");
  working.compute("F_cr", inelastic ? "0.658^(F_y/F_e)*F_y" : "0.877*F_e", "MPa", inelastic ? "Eq. E3-2" : "Eq. E3-3");
}
