import { doorPost, type DoorPostSection } from "../catalog/sections/door-post.ts";
import type { Steel } from "../catalog/materials.ts";
import { aisi, flexureFactors, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { letYield } from "../codes/steel/steel-basis.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";

/** First yield of the door post about an axis of its cell, N·mm: closed, with whole walls, so it neither twists nor buckles locally. */
export function doorPostBending(
  post: { readonly steel: Steel; readonly section?: DoorPostSection },
  axis: "x" | "y",
  basis: ColdFormedBasis,
): Resistance {
  const section = post.section ?? doorPost;
  const working = openWorking("Door corner post in bending", aisi(basis, "F2.1.4, F3.1"));
  letYield(working, post.steel);
  const modulus = axis === "x" ? section.sxMm3 : section.syMm3;
  working.let("S", modulus, "mm³", `gross modulus, axis ${axis}, ${section.name}`, section.certainty, section.source);
  working.compute("M_n", "S*F_y", "N·mm", "Eq. F3.1-1");
  return stateResistance(working, "M_n", "N·mm", flexureFactors, basis.method);
}
