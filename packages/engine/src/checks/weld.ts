import { thickestThinPartMm, thinFilletWeld } from "../codes/cold-formed/thin-weld.ts";
import type { ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { filletWeld, type FilletWeld } from "../codes/steel/fillet-weld.ts";
import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import type { Resistance } from "../working/resistance.ts";

/** Strength of a fillet weld by the code its thinner part belongs to: thin steel up to 4.76 mm, structural steel above, N. */
export function filletStrength(weld: FilletWeld, steel: SteelBasis, thin: ColdFormedBasis): Resistance {
  if (weld.thinner.thicknessMm > thickestThinPartMm) return filletWeld(weld, steel);
  // Between along and across, along is the weaker: it stands for every other direction.
  const force = weld.angleDegree === 90 ? "across" : "along";
  return thinFilletWeld({ ...weld, force }, thin);
}
