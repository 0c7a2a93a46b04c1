import { steelModulus } from "../catalog/materials.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import type { MemberDemand } from "../checks/member-demand.ts";

/**
 * Moments of a pressed member enlarged by its own bow: B₁ = 1/(1 − P/P_e) with 0.8 of the stiffness and C_m = 1 (AISC 360
 * Appendix 8, from memory). Infinite where the force reaches the elastic one.
 */
export function bowedDemand(
  demand: MemberDemand,
  { section, lengths }: Pick<CheckedMember, "section" | "lengths">,
): MemberDemand {
  if (demand.axialN <= 0) return demand;
  const [strongMm4, weakMm4] = section.kind === "angle" ? [section.iMm4, section.iMm4] : [section.ixMm4, section.iyMm4];
  return {
    ...demand,
    momentStrongNmm: demand.momentStrongNmm * enlargement(demand.axialN, strongMm4, lengths.strongMm),
    momentWeakNmm: demand.momentWeakNmm * enlargement(demand.axialN, weakMm4, lengths.weakMm),
  };
}

/** B₁; a force at or beyond the elastic one leaves no moment that could be stood. */
export function enlargement(axialN: number, inertiaMm4: number, lengthMm: number): number {
  const elasticN = (STIFFNESS_LEFT * PI_SQUARED * steelModulus.valueMpa * inertiaMm4) / (lengthMm * lengthMm);
  return axialN < elasticN ? 1 / (1 - axialN / elasticN) : Infinity;
}

const STIFFNESS_LEFT = 0.8;
const PI_SQUARED = 9.869604401089358;
