import type { Steel } from "../../catalog/materials.ts";
import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aisi, type ColdFormedBasis } from "./cold-formed-basis.ts";

/** Thinner parts above this are structural steel's business, mm (AISI S100 J2: 3/16 in). */
export const thickestThinPartMm = 4.76;

/** Fillet weld where the thinner part is at most 4.76 mm thick; force along the weld's line or across it. */
export type ThinFillet = {
  readonly lengthMm: number;
  readonly legMm: number;
  readonly electrodeMpa: number;
  readonly force: "along" | "across";
  readonly thinner: { readonly thicknessMm: number; readonly steel: Steel };
};

const short: StrengthFactors = { phi: 0.6, omega: 2.55, certainty: "memory" };
const long: StrengthFactors = { phi: 0.5, omega: 3.05, certainty: "memory" };
const across: StrengthFactors = { phi: 0.65, omega: 2.35, certainty: "memory" };

/** Strength of a fillet weld on thin steel (J2.5), N. Throws for a thicker part: AISC 360 J2.4 is its clause. */
export function thinFilletWeld(weld: ThinFillet, basis: ColdFormedBasis): Resistance {
  const { steel, thicknessMm } = weld.thinner;
  if (thicknessMm > thickestThinPartMm) throw new RangeError(`thinFilletWeld: ${thicknessMm} mm is no thin part`);
  const working = openWorking("Fillet weld on thin steel", aisi(basis, "J2.5"));
  working.let("t", thicknessMm, "mm", "thinner part", "derived");
  working.let("L", weld.lengthMm, "mm", "length", "derived");
  working.let("F_u", steel.fuMpa, "MPa", `tensile strength, ${steel.name}`, steel.certainty, steel.source);
  const isShort = weld.force === "along" && working.when("L/t", "<", "25", "J2.5(a)");
  const sheet = weld.force === "across" ? "t*L*F_u" : isShort ? "(1 - 0.01*L/t)*L*t*F_u" : "0.75*t*L*F_u";
  working.compute(
    "P_sheet",
    sheet,
    "N",
    weld.force === "across" ? "Eq. J2.5-3" : isShort ? "Eq. J2.5-1" : "Eq. J2.5-2",
  );
  const factors = weld.force === "across" ? across : isShort ? short : long;
  if (working.when("t", "<=", "2.54", "J2.5")) {
    working.compute("P_n", "P_sheet", "N");
    return stateResistance(working, "P_n", "N", factors, basis.method);
  }
  working.let("w", weld.legMm, "mm", "leg", "derived");
  working.let("F_xx", weld.electrodeMpa, "MPa", "electrode strength", "memory");
  // The throat has φ 0.60, Ω 2.55 of its own: it is brought to the factors of the sheet before the two are compared.
  const even = basis.method === "LRFD" ? short.phi / factors.phi : factors.omega / short.omega;
  working.let("c", even, "1", "throat's factor over the sheet's", "memory");
  working.compute("P_throat", "c*0.75*0.707*w*L*F_xx", "N", "Eq. J2.5-4");
  working.compute("P_n", "min(P_sheet, P_throat)", "N");
  return stateResistance(working, "P_n", "N", factors, basis.method);
}
