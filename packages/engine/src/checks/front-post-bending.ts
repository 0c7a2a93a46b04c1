import { containerMembers } from "../catalog/sections/container-members.ts";
import { lengthOf } from "../catalog/sections/thin-walled-section.ts";
import { wallsAlong } from "../catalog/sections/open-section.ts";
import type { PressedSection } from "../catalog/sections/section.ts";
import { aisi, flexureFactors, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { letModulus, letShearModulus, letYield } from "../codes/steel/steel-basis.ts";
import { openWorking, type OpenWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";
import type { FrontPost } from "./front-post.ts";

/**
 * Lower bound of the front post's strength in bending about any axis, N·mm: least second moment over the farthest fibre,
 * the widest wall as if no lip held it, and half the moment at which the bare section would twist sideways without warping.
 */
export function frontPostBendingAlone(post: FrontPost, basis: ColdFormedBasis): Resistance {
  const section = post.section ?? containerMembers["front corner post"];
  const working = openPost("Front corner post in bending, lower bound", post, section, basis);
  letShearModulus(working);
  working.let("I_min", section.iMinMm4, "mm⁴", "least second moment", section.certainty, section.source);
  working.let(
    "c",
    farthestFibreMm(section),
    "mm",
    "farthest fibre from the centroid",
    section.certainty,
    section.source,
  );
  working.let("J", section.jMm4, "mm⁴", "torsion constant", section.certainty, section.source);
  working.let("L", post.clearMm, "mm", "clear length", "derived");
  working.let("half", 0.5, "1", "for a section without symmetry", "common practice");
  working.compute("S", "I_min/c", "mm³");
  working.compute("F_cre", "half*π/L*sqrt(E*I_min*G*J)/S", "MPa", "F2.1, no warping");
  if (working.when("F_cre", ">=", "2.78*F_y", "F2.1")) working.compute("F_n", "F_y", "MPa", "Eq. F2.1-3");
  else if (working.when("F_cre", ">", "0.56*F_y", "F2.1"))
    working.compute("F_n", "10/9*F_y*(1 - 10*F_y/(36*F_cre))", "MPa", "Eq. F2.1-4");
  else working.compute("F_n", "F_cre", "MPa", "Eq. F2.1-5");
  wallShare(working, section);
  working.compute("M_n", "ρ*S*F_n", "N·mm", "Eq. F3.1-1, bounded");
  return stateResistance(working, "M_n", "N·mm", flexureFactors, basis.method);
}

/** Upper bound, N·mm: first yield about the axis across (x) or along (y) the outline, the sheet holding the post. */
export function frontPostBendingHeld(post: FrontPost, axis: "x" | "y", basis: ColdFormedBasis): Resistance {
  const section = post.section ?? containerMembers["front corner post"];
  const working = openPost("Front corner post in bending, upper bound", post, section, basis);
  const modulus = axis === "x" ? section.sxMm3 : section.syMm3;
  working.let("S", modulus, "mm³", `gross modulus, axis ${axis}`, section.certainty, section.source);
  working.compute("M_n", "S*F_y", "N·mm", "Eq. F3.1-1, bounded");
  return stateResistance(working, "M_n", "N·mm", flexureFactors, basis.method);
}

function openPost(title: string, post: FrontPost, section: PressedSection, basis: ColdFormedBasis): OpenWorking {
  const working = openWorking(title, aisi(basis, "F2, F3.1, bounded"));
  letModulus(working);
  letYield(working, post.steel);
  working.let("t", section.thicknessMm, "mm", `thickness, ${section.name}`, section.certainty, section.source);
  return working;
}

function wallShare(working: OpenWorking, section: PressedSection): void {
  const t = section.thicknessMm;
  const widest = Math.max(...wallsAlong(section.outline, t).map((wall) => lengthOf(wall) - t / 2));
  working.let("w", widest, "mm", "widest wall, its lip not counted", "derived");
  working.compute("λ", "sqrt(F_n/(0.43*π^2*E/(12*(1 - 0.3^2))*(t/w)^2))", "1", "App. 1, Eq. 1.1-2");
  const whole = working.when("λ", "<=", "0.673", "App. 1, 1.2.1");
  working.compute("ρ", whole ? "1" : "(1 - 0.22/λ)/λ", "1", "App. 1, Eq. 1.1-3");
}

function farthestFibreMm(section: PressedSection): number {
  const { centroid, outline, thicknessMm } = section;
  const distances = outline.map(({ xMm, yMm }) => {
    const [dx, dy] = [xMm - centroid.xMm, yMm - centroid.yMm];
    return Math.sqrt(dx * dx + dy * dy);
  });
  // Square corners reach t/√2 beyond the centreline's corner.
  return Math.max(...distances) + thicknessMm / Math.sqrt(2);
}
