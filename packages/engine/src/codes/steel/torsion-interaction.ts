import { openWorking } from "../../working/open-working.ts";
import type { Clause, Working } from "../../working/working.ts";

/** A working to be read as a ratio, or one demand against one strength. */
export type Share = { readonly demand: number; readonly strength: Working };

/**
 * Torsion with everything else (AISC 360 H3.2): P/P_c + M_x/M_cx + M_y/M_cy + (V_x/V_cx + V_y/V_cy + T/T_c)² against 1.
 * The clause is for tubes; for open shapes it is used as a bound with St Venant torsion alone.
 */
export function torsionWithOthers(
  clause: Clause,
  shares: {
    readonly axial: Share;
    readonly strong: Share;
    readonly weak: Share;
    readonly shear: Share;
    readonly shearWeak: Share;
    readonly torsion: Share;
  },
): Working {
  const working = openWorking("Torsion with other forces", clause);
  const put = (demand: string, strength: string, share: Share): void => {
    working.let(demand, Math.abs(share.demand), share.strength.result.unit, "required strength", "derived", "analysis");
    working.take(strength, share.strength);
  };
  put("P", "P_c", shares.axial);
  put("M_x", "M_cx", shares.strong);
  put("M_y", "M_cy", shares.weak);
  put("V_x", "V_cx", shares.shear);
  put("V_y", "V_cy", shares.shearWeak);
  put("T", "T_c", shares.torsion);
  working.compute("ratio", "P/P_c + M_x/M_cx + M_y/M_cy + (V_x/V_cx + V_y/V_cy + T/T_c)^2", "1", "Eq. H3-6");
  working.let("limit", 1, "1", "limit", "memory");
  return working.against("ratio", "limit");
}
