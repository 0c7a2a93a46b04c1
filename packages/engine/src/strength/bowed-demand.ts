import { steelModulus } from "../catalog/materials.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import type { MemberDemand } from "../checks/member-demand.ts";

/**
 * Moments of a pressed member enlarged by its own bow: B₁ = 1/(1 − P/P_e) with 0.8 of the stiffness and C_m = 1 (AISC 360
 * Appendix 8, from memory).
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

/** B₁, held at ten: a force beyond nine tenths of the elastic one fails by itself, and more of it never counts for less. */
export function enlargement(axialN: number, inertiaMm4: number, lengthMm: number): number {
  const elasticN = (STIFFNESS_LEFT * PI_SQUARED * steelModulus.valueMpa * inertiaMm4) / (lengthMm * lengthMm);
  return axialN < 0.9 * elasticN ? 1 / (1 - axialN / elasticN) : MOST;
}

const MOST = 10;
const STIFFNESS_LEFT = 0.8;
const PI_SQUARED = 9.869604401089358;
