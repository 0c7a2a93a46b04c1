import type { StrengthFactors } from "../../working/design-method.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { aci } from "./anchor-group.ts";

/** A pad of plain concrete under a plate in its middle, mm, MPa. */
export type PlainPad = {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly depthMm: number;
  readonly plateLengthMm: number;
  readonly plateWidthMm: number;
  readonly concreteMpa: number;
};

/** φ of plain concrete (21.2). No allowable-stress form. */
const plainFactors: StrengthFactors = { phi: 0.6, omega: 1, certainty: "memory" };

/** Cast against soil, 50 mm of the depth do not count (14.5.1.7). */
const lostAgainstSoilMm = 50;

/** Force at which a plain pad cracks in bending at the plate's face, even ground pressure (14.5.2), N, strength design. */
export function plainPadBending(pad: PlainPad): Resistance {
  if (tooSmall(pad)) return refused("proportions outside the clause's limits");
  const working = openPad("Plain concrete pad in bending", "14.5.2", pad);
  working.compute("a", "max((L - N)/2, (B - M)/2)", "mm", "overhang beyond the plate");
  working.compute("m_n", "0.42*sqrt(f_c)*h^2/6", "N·mm/mm", "Eq. 14.5.2.1a");
  // The stronger of no overhang at all bears any force; one millimetre stands for it.
  working.compute("P_n", "m_n*2*L*B/max(a, 1)^2", "N", "q a²/2 = m_n");
  return stateResistance(working, "P_n", "N", plainFactors, "LRFD");
}

/** Force at which the plate punches through a plain pad (14.5.5), the ground under the cone not counted, N. */
export function plainPadPunching(pad: PlainPad): Resistance {
  if (tooSmall(pad)) return refused("proportions outside the clause's limits");
  const working = openPad("Plain concrete pad in punching", "14.5.5", pad);
  working.compute("b_o", "2*(N + h) + 2*(M + h)", "mm", "half the depth from the plate");
  working.compute("β", "max(N, M)/min(N, M)", "1");
  working.compute("P_n", "min(0.11*(1 + 2/β), 0.22)*sqrt(f_c)*b_o*h", "N", "Eq. 14.5.5.1b");
  return stateResistance(working, "P_n", "N", plainFactors, "LRFD");
}

/** Plain footings are at least 200 mm deep (14.3.2). */
const tooSmall = (pad: PlainPad): boolean =>
  pad.depthMm < 200 || pad.plateLengthMm > pad.lengthMm || pad.plateWidthMm > pad.widthMm;

function openPad(title: string, place: string, pad: PlainPad): OpenWorking {
  const working = openWorking(title, aci(place));
  working.let("L", pad.lengthMm, "mm", "pad length", "derived");
  working.let("B", pad.widthMm, "mm", "pad width", "derived");
  working.let("N", pad.plateLengthMm, "mm", "plate along the length", "derived");
  working.let("M", pad.plateWidthMm, "mm", "plate along the width", "derived");
  working.let("f_c", pad.concreteMpa, "MPa", "concrete strength", "derived");
  working.let("h", pad.depthMm - lostAgainstSoilMm, "mm", "depth less 50 cast against soil", "memory");
  return working;
}
