import type { Steel } from "../../catalog/materials.ts";
import type { ISection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { webHeightMm } from "./effective-area.ts";
import {
  aisc,
  fullYieldFactors,
  letModulus,
  letYield,
  memberFactors,
  ruptureFactors,
  type SteelBasis,
} from "./steel-basis.ts";

/** A force pressed on the flange of an I shape: length it is spread over, and from its middle to the member's end, mm. */
export type FlangeForce = {
  readonly section: ISection;
  readonly steel: Steel;
  readonly bearingMm: number;
  readonly toEndMm: number;
};

/** Web local yielding (J10.2), N. */
export function webYielding(force: FlangeForce, basis: SteelBasis): Resistance {
  const working = openWorking("Web local yielding", aisc(basis, "J10.2"));
  const { section } = force;
  letYield(working, force.steel);
  letWeb(working, force);
  // Without a fillet size k is the flange alone: on the safe side.
  working.let(
    "k",
    section.kMm ?? section.flangeMm,
    "mm",
    "outer face to toe of fillet",
    section.certainty,
    section.source,
  );
  const inside = working.when("x_e", ">", "d", "J10.2");
  working.compute(
    "R_n",
    inside ? "F_y*t_w*(5*k + l_b)" : "F_y*t_w*(2.5*k + l_b)",
    "N",
    inside ? "Eq. J10-2" : "Eq. J10-3",
  );
  return stateResistance(working, "R_n", "N", fullYieldFactors, basis.method);
}

/** Web local crippling (J10.3), N. */
export function webCrippling(force: FlangeForce, basis: SteelBasis): Resistance {
  const { section } = force;
  const working = openWorking("Web local crippling", aisc(basis, "J10.3"));
  letModulus(working);
  letYield(working, force.steel);
  letWeb(working, force);
  working.let("t_f", section.flangeMm, "mm", "flange", section.certainty, section.source);
  working.compute("C", "sqrt(E*F_y*t_f/t_w)", "MPa");
  working.compute("R_n", cripplingFormula(working), "N", "Eq. J10-4, J10-5");
  return stateResistance(working, "R_n", "N", ruptureFactors, basis.method);
}

function cripplingFormula(working: OpenWorking): string {
  if (working.when("x_e", ">=", "d/2", "J10.3(a)")) return "0.8*t_w^2*(1 + 3*l_b/d*(t_w/t_f)^1.5)*C";
  return working.when("l_b/d", "<=", "0.2", "J10.3(b)")
    ? "0.4*t_w^2*(1 + 3*l_b/d*(t_w/t_f)^1.5)*C"
    : "0.4*t_w^2*(1 + (4*l_b/d - 0.2)*(t_w/t_f)^1.5)*C";
}

/** Web compression buckling, a pair of forces on both flanges (J10.5), N. */
export function webBuckling(force: FlangeForce, basis: SteelBasis): Resistance {
  const { section } = force;
  const working = openWorking("Web compression buckling", aisc(basis, "J10.5"));
  letModulus(working);
  letYield(working, force.steel);
  letWeb(working, force);
  working.let("h", webHeightMm(section), "mm", "clear height of the web", section.certainty, section.source);
  const inside = working.when("x_e", ">=", "d/2", "J10.5");
  working.compute("R_n", inside ? "24*t_w^3*sqrt(E*F_y)/h" : "12*t_w^3*sqrt(E*F_y)/h", "N", "Eq. J10-8");
  return stateResistance(working, "R_n", "N", memberFactors, basis.method);
}

/** Flange local bending under a pull across its whole width (J10.1), N; half within ten flange thicknesses of the end. */
export function flangeBending(force: FlangeForce, basis: SteelBasis): Resistance {
  const { section } = force;
  const working = openWorking("Flange local bending", aisc(basis, "J10.1"));
  letYield(working, force.steel);
  working.let("t_f", section.flangeMm, "mm", `flange, ${section.name}`, section.certainty, section.source);
  working.let("x_e", force.toEndMm, "mm", "force to the member's end", "derived");
  const inside = working.when("x_e", ">=", "10*t_f", "J10.1");
  working.compute("R_n", inside ? "6.25*F_y*t_f^2" : "3.125*F_y*t_f^2", "N", "Eq. J10-1");
  return stateResistance(working, "R_n", "N", memberFactors, basis.method);
}

function letWeb(working: OpenWorking, { section, bearingMm, toEndMm }: FlangeForce): void {
  const { certainty, source } = section;
  working.let("d", section.depthMm, "mm", `depth, ${section.name}`, certainty, source);
  working.let("t_w", section.webMm, "mm", "web", certainty, source);
  working.let("l_b", bearingMm, "mm", "length of bearing", "derived");
  working.let("x_e", toEndMm, "mm", "force to the member's end", "derived");
}
