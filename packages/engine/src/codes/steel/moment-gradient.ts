import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { aisc, type SteelBasis } from "./steel-basis.ts";

/** Moments within one unbraced length, N·mm: the largest and those at its quarter points, as absolute values. */
export type MomentsAlong = {
  readonly largest: number;
  readonly atQuarter: number;
  readonly atMiddle: number;
  readonly atThreeQuarters: number;
};

/** Modification factor for moments that are not uniform (F1-1). Throws where the largest moment is not the largest. */
export function momentGradient(moments: MomentsAlong, basis: SteelBasis): Working {
  const working = openWorking("Moment gradient", aisc(basis, "F1"));
  working.let("M_max", Math.abs(moments.largest), "N·mm", "largest moment", "derived");
  working.let("M_A", Math.abs(moments.atQuarter), "N·mm", "moment at a quarter", "derived");
  working.let("M_B", Math.abs(moments.atMiddle), "N·mm", "moment at the middle", "derived");
  working.let("M_C", Math.abs(moments.atThreeQuarters), "N·mm", "moment at three quarters", "derived");
  if (!working.when("max(M_A, M_B, M_C)", "<=", "M_max"))
    throw new RangeError("momentGradient: largest is not largest");
  working.compute("C_b", "12.5*M_max/(2.5*M_max + 3*M_A + 4*M_B + 3*M_C)", "1", "Eq. F1-1");
  return working.giving("C_b");
}
