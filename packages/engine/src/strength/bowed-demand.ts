import { steelModulus } from "../catalog/materials.ts";
import type { CheckedMember } from "../checks/checked-member.ts";

/** Elastic forces of a member between what holds it, N, by its strong and its weak axis, with the stiffness left. */
export type BowLimits = { readonly strongN: number; readonly weakN: number };

export function bowLimits({ section, lengths }: Pick<CheckedMember, "section" | "lengths">): BowLimits {
  const [strongMm4, weakMm4] = section.kind === "angle" ? [section.iMm4, section.iMm4] : [section.ixMm4, section.iyMm4];
  return { strongN: elasticN(strongMm4, lengths.strongMm), weakN: elasticN(weakMm4, lengths.weakMm) };
}

export const elasticN = (inertiaMm4: number, lengthMm: number): number =>
  (STIFFNESS_LEFT * PI_SQUARED * steelModulus.valueMpa * inertiaMm4) / (lengthMm * lengthMm);

/**
 * B₁ = 1/(1 − P/P_e) with 0.8 of the stiffness and C_m = 1 (AISC 360 Appendix 8, from memory); 1 in tension. Held at ten: a
 * force beyond nine tenths of the elastic one fails by itself, and more of it never counts for less.
 */
export function enlargement(axialN: number, limitN: number): number {
  if (axialN <= 0) return 1;
  return axialN < 0.9 * limitN ? 1 / (1 - axialN / limitN) : MOST;
}

const MOST = 10;
const STIFFNESS_LEFT = 0.8;
const PI_SQUARED = 9.869604401089358;
