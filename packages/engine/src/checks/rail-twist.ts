import type { Steel } from "../catalog/materials.ts";
import { greatestSectorialMm2 } from "../catalog/sections/open-section.ts";
import type { PressedSection } from "../catalog/sections/section.ts";
import { aisc, letYield, memberFactors } from "../codes/steel/steel-basis.ts";
import { availableStrength } from "../working/design-method.ts";
import { openWorking } from "../working/open-working.ts";
import { checkOf, type Check } from "./check.ts";
import type { CodeBasis } from "./code-basis.ts";
import type { MemberDemand } from "./member-demand.ts";

/**
 * A bottom rail that a force across at a seat twists between two cross members. `nearMm` and `farMm` from the ends of the
 * seat's plate to them: over the plate nothing warps. `lineMm` is how far the line of the model stands above the place where the
 * force enters, `baseMm` how far the rail's lower face does.
 */
export type TwistedRail = {
  readonly section: PressedSection;
  readonly nearMm: number;
  readonly farMm: number;
  readonly lineMm: number;
  readonly baseMm: number;
};

/**
 * Greatest stress along the rail, elastic (AISC 360 H3.3(a)): axial force, bending both ways and warping. Over so short a way an
 * open shape carries torsion by its flanges bending opposite ways: all of it so, none by St Venant shear. The torque is about the
 * shear centre, T (z_line + a)/z_line. It goes to both cross members, where the rail is free to warp, so that both ways are
 * stressed alike: B = T e₁ e₂/(e₁ + e₂). Both are stress fields in equilibrium (lower bound theorem). Greatest stresses are added
 * wherever they stand. Flats as short as these yield before they buckle.
 */
export function warpedRail(rail: TwistedRail, steel: Steel, demand: MemberDemand, basis: CodeBasis): Check {
  const { section } = rail;
  const working = openWorking("Rail twisted beside a seat", aisc(basis.steel, "H3.3(a)"));
  const put = (symbol: string, value: number, unit: "N" | "N·mm", meaning: string): void =>
    void working.let(symbol, Math.abs(value), unit, meaning, "derived", "analysis");
  put("P", demand.axialN, "N", "axial force");
  put("M_x", demand.momentStrongNmm, "N·mm", "moment, strong axis");
  put("M_y", demand.momentWeakNmm, "N·mm", "moment, weak axis; over the plate that at its end");
  put("T", demand.torsionNmm, "N·mm", "couple about the line of the model, both sides of the seat together");
  working.let("z", rail.lineMm, "mm", "that line above the force", "derived");
  working.let("a", shearCentreAboveLineMm(rail), "mm", "shear centre above that line", "derived");
  working.let("e_1", rail.nearMm, "mm", "end of the plate to the nearest cross member", "common practice");
  working.let("e_2", rail.farMm, "mm", "other end of the plate to the next", "common practice");
  working.let("A", section.areaMm2, "mm²", section.name, section.certainty, section.source);
  working.let("S_x", section.sxMm3, "mm³", "section modulus, strong axis", "derived");
  working.let("S_y", section.syMm3, "mm³", "section modulus, weak axis", "derived");
  working.let("C_w", section.cwMm6, "mm⁶", "warping constant", "derived");
  working.let("ω", sectorialOf(section), "mm²", "greatest sectorial coordinate", "derived");
  if (rail.nearMm > 0) working.compute("e", "e_1*e_2/(e_1 + e_2)", "mm");
  else working.let("e", 0, "mm", "the plate reaches the cross member", "derived");
  working.compute("B", "T*(z + a)/z*e", "N·mm²", "Vlasov");
  working.compute("f", "P/A + M_x/S_x + M_y/S_y + B*ω/C_w", "MPa");
  letYield(working, steel);
  availableStrength(working, "f_c", "F_y", "MPa", memberFactors, basis.steel.method);
  const subject = { element: "bottom side rail", limitState: "torsion with other forces" } as const;
  return checkOf(subject, working.against("f", "f_c"));
}

/** The utilisation of `warpedRail` on plain numbers, for running through combinations. */
export function warpedUse(rail: TwistedRail, steel: Steel, { steel: { method } }: CodeBasis) {
  const { section, nearMm, farMm, lineMm } = rail;
  const { areaMm2, sxMm3, syMm3, cwMm6 } = section;
  const leverMm = nearMm > 0 ? (nearMm * farMm) / (nearMm + farMm) : 0;
  const perTorque = (((lineMm + shearCentreAboveLineMm(rail)) / lineMm) * leverMm * sectorialOf(section)) / cwMm6;
  const available = method === "LRFD" ? memberFactors.phi * steel.fyMpa : steel.fyMpa / memberFactors.omega;
  return ({ axialN, momentStrongNmm, momentWeakNmm, torsionNmm }: MemberDemand): number => {
    const stress =
      Math.abs(axialN) / areaMm2 +
      Math.abs(momentStrongNmm) / sxMm3 +
      Math.abs(momentWeakNmm) / syMm3 +
      Math.abs(torsionNmm) * perTorque;
    return stress / available;
  };
}

const shearCentreAboveLineMm = ({ section, lineMm, baseMm }: TwistedRail): number =>
  Math.max(baseMm + section.thicknessMm / 2 + section.shearCentre.yMm - lineMm, 0);

const sectorialOf = ({ outline, thicknessMm }: PressedSection): number => greatestSectorialMm2(outline, thicknessMm);
