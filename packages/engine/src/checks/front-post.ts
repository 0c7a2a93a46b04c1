import type { Steel } from "../catalog/materials.ts";
import { containerMembers } from "../catalog/sections/container-members.ts";
import type { PressedSection } from "../catalog/sections/section.ts";
import { lengthOf } from "../catalog/sections/thin-walled-section.ts";
import { wallsAlong } from "../catalog/sections/open-section.ts";
import { aisi, compressionFactors, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { effectiveShare, evenPlateFactors } from "../codes/cold-formed/effective-width.ts";
import { globalStress, letElasticStress } from "../codes/cold-formed/pressed-compression.ts";
import { letModulus, letYield } from "../codes/steel/steel-basis.ts";
import { openWorking, type OpenWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";

/** The lipped front corner post: its outline (assumed unless given), its steel, its clear length, mm. */
export type FrontPost = { readonly steel: Steel; readonly clearMm: number; readonly section?: PressedSection };

/**
 * Lower bound, N: the post alone, its sheet gone, pinned at both ends for bending and twist; no wall helped by its lip
 * (every wall but the lips' own corner held on one edge, k 0.43).
 */
export function frontPostAlone(post: FrontPost, basis: ColdFormedBasis): Resistance {
  const section = post.section ?? containerMembers["front corner post"];
  const working = openWorking("Front corner post without its sheet, lower bound", aisi(basis, "E2, E3.1, bounded"));
  letModulus(working);
  letYield(working, post.steel);
  const { clearMm } = post;
  letElasticStress(working, section, { strongMm: clearMm, weakMm: clearMm, twistMm: clearMm });
  globalStress(working);
  return effectiveSquash(working, section, () => evenPlateFactors.oneEdge, basis);
}

/** Upper bound, N: held along its length by whole sheets on both faces; inner walls are held on both edges by corner and lip. */
export function frontPostHeld(post: FrontPost, basis: ColdFormedBasis): Resistance {
  const section = post.section ?? containerMembers["front corner post"];
  const working = openWorking("Front corner post with its sheet, upper bound", aisi(basis, "E3.1, bounded"));
  letModulus(working);
  letYield(working, post.steel);
  working.compute("F_n", "F_y", "MPa", "held along its length");
  const last = section.outline.length - 2;
  const factor = (at: number): number =>
    at === 0 || at === last ? evenPlateFactors.oneEdge : evenPlateFactors.bothEdges;
  return effectiveSquash(working, section, factor, basis);
}

/** Strength of the effective area at F_n; `factorOf` gives the plate factor of each wall in the outline's order. */
function effectiveSquash(
  working: OpenWorking,
  section: PressedSection,
  factorOf: (at: number) => number,
  basis: ColdFormedBasis,
): Resistance {
  const t = section.thicknessMm;
  const stress = working.value("F_n");
  const area = wallsAlong(section.outline, t).reduce((total, wall, at) => {
    const flat = lengthOf(wall) - t / 2;
    return total + lengthOf(wall) * t - (1 - effectiveShare(factorOf(at), flat, t, stress)) * flat * t;
  }, 0);
  working.let("A_g", section.areaMm2, "mm²", `gross area, ${section.name}`, section.certainty, section.source);
  working.let("A_e", area, "mm²", "area that works at F_n, wall by wall (Appendix 1)", "derived");
  working.compute("P_n", "A_e*F_n", "N", "Eq. E3.1-1");
  return stateResistance(working, "P_n", "N", compressionFactors, basis.method);
}
