import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letModulus, letYield } from "../steel/steel-basis.ts";
import { asChannel, flatFlangeMm, flatWebMm } from "./channel-member.ts";
import { aisi, type ColdFormedBasis } from "./cold-formed-basis.ts";

/** A plate welded to the web of a channel and fitted between its flanges; it may not be wider than the narrower of them. */
export type WebStiffener = { readonly thicknessMm: number; readonly steel: Steel };

export type StiffenedWeb = {
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly stiffener: WebStiffener;
};

const factors: StrengthFactors = { phi: 0.85, omega: 2, certainty: "memory" };

/**
 * A bearing stiffener away from the member's end (F5.1), N: squashed with 18 t² of web, or buckling as a column as high as the
 * web with 25 t of it at most. Its stiffness is that of the plate alone about its own middle, on the safe side.
 */
export function bearingStiffener({ section, steel, stiffener }: StiffenedWeb, basis: ColdFormedBasis): Resistance {
  const channel = asChannel(section, steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const working = openWorking("Bearing stiffener in the web", aisi(basis, "F5.1"));
  letModulus(working);
  letYield(working, steel.fyMpa <= stiffener.steel.fyMpa ? steel : stiffener.steel);
  working.let("t", section.thicknessMm, "mm", `web, ${section.name}`, section.certainty, section.source);
  working.let("L", flatWebMm(channel), "mm", "height of the stiffener", section.certainty, section.source);
  working.let(
    "w",
    Math.min(flatFlangeMm(channel, "head"), flatFlangeMm(channel, "foot")),
    "mm",
    "its width, inside the narrower flange",
    section.certainty,
    section.source,
  );
  working.let("t_s", stiffener.thicknessMm, "mm", "its thickness", "common practice", "as drawn");
  if (!working.when("w/t_s", "<=", "1.28*sqrt(E/F_y)", "F5.1"))
    return refused("proportions outside the clause's limits");
  squashed(working);
  buckled(working);
  working.compute("P_n", "min(P_a, P_b)", "N");
  return stateResistance(working, "P_n", "N", factors, basis.method);
}

function squashed(working: OpenWorking): void {
  working.compute("A_c", "18*t^2 + w*t_s", "mm²", "Eq. F5.1-2");
  working.compute("P_a", "F_y*A_c", "N", "Eq. F5.1-1");
}

function buckled(working: OpenWorking): void {
  working.compute("b_1", "min(25*t*(0.0024*L/t + 0.72), 25*t)", "mm", "Eq. F5.1-6");
  working.compute("A_b", "b_1*t + w*t_s", "mm²", "Eq. F5.1-4");
  working.compute("r", "sqrt(t_s*w^3/12/A_b)", "mm");
  working.compute("F_e", "π^2*E/(L/r)^2", "MPa", "Eq. E2.1-1");
  working.compute("λ", "sqrt(F_y/F_e)", "1", "Eq. E2-4");
  const stocky = working.when("λ", "<=", "1.5", "E2");
  working.compute("F_n", stocky ? "0.658^(λ^2)*F_y" : "0.877/λ^2*F_y", "MPa", "Eq. E2-2, E2-3");
  working.compute("P_b", "F_n*A_b", "N");
}
