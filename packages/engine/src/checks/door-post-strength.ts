import type { Steel } from "../catalog/materials.ts";
import { doorPost, type DoorPostSection } from "../catalog/sections/door-post.ts";
import { aisi, compressionFactors, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { globalStress } from "../codes/cold-formed/pressed-compression.ts";
import { letModulus, letYield } from "../codes/steel/steel-basis.ts";
import { openWorking, type OpenWorking } from "../working/open-working.ts";
import { refused, type Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";

export type DoorPost = { readonly steel: Steel; readonly clearMm: number; readonly section?: DoorPostSection };

/**
 * Door corner post alone, pinned at both ends, N: a closed cell, so flexural buckling about its weaker axis decides. Its
 * widest wall must be whole at F_n (k 4); refused otherwise.
 */
export function doorPostAlone(post: DoorPost, basis: ColdFormedBasis): Resistance {
  const section = post.section ?? doorPost;
  const working = openPost("Door corner post alone", post.steel, section, basis);
  working.let("r", section.rMinMm, "mm", "least radius of gyration", section.certainty, section.source);
  working.let("L", post.clearMm, "mm", "clear length", "derived");
  working.compute("F_cre", "π^2*E/(L/r)^2", "MPa", "Eq. E2.1-1");
  globalStress(working);
  return wholeWalls(working, section, basis);
}

/** Door corner post held along its length by whole sheet, N: its squash load. */
export function doorPostHeld(post: DoorPost, basis: ColdFormedBasis): Resistance {
  const section = post.section ?? doorPost;
  const working = openPost("Door corner post held by its sheet", post.steel, section, basis);
  working.compute("F_n", "F_y", "MPa", "held along its length");
  return wholeWalls(working, section, basis);
}

function openPost(title: string, steel: Steel, section: DoorPostSection, basis: ColdFormedBasis): OpenWorking {
  const working = openWorking(title, aisi(basis, "E2, E3.1"));
  letModulus(working);
  letYield(working, steel);
  working.let("A_g", section.areaMm2, "mm²", section.name, section.certainty, section.source);
  return working;
}

function wholeWalls(working: OpenWorking, section: DoorPostSection, basis: ColdFormedBasis): Resistance {
  const { widthMm, thicknessMm } = section.widestWall;
  working.let("w", widthMm, "mm", "flat of the widest wall", section.certainty, section.source);
  working.let("t", thicknessMm, "mm", "that wall", section.certainty, section.source);
  working.compute("λ", "sqrt(F_n/(4*π^2*E/(12*(1 - 0.3^2))*(t/w)^2))", "1", "App. 1, Eq. 1.1-2");
  if (!working.when("λ", "<=", "0.673", "App. 1, 1.1")) return refused("wall too slender for the clause implemented");
  working.compute("P_n", "A_g*F_n", "N", "Eq. E3.1-1");
  return stateResistance(working, "P_n", "N", compressionFactors, basis.method);
}
