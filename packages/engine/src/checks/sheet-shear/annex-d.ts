import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { letPanel, type SheetPanel } from "./sheet-panel.ts";

/**
 * Shear flow a corrugated web bears by EN 1993-1-5 Annex D, N/mm, γ_M1 = 1: the smaller of local and global reduction.
 * Written for girder webs between flanges: a wall needs stiff boundary members on all sides.
 */
export function annexD(panel: SheetPanel): Working {
  const clause = { document: "EN 1993-1-5", edition: "2006", place: "Annex D.2.2", certainty: "memory" } as const;
  const working = openWorking("Sheet in shear, corrugated web of a girder", clause);
  letPanel(working, panel);
  working.compute("τ_l", "4.83*E*(t/a)^2", "MPa", "Eq. D.6");
  working.compute("λ_l", "sqrt(F_y/(τ_l*sqrt(3)))", "1", "Eq. D.5");
  working.compute("χ_l", "min(1, 1.15/(0.9 + λ_l))", "1", "Eq. D.4");
  working.compute("τ_g", "32.4*sqrt(sqrt(D_x*D_z^3))/(t*h^2)", "MPa", "Eq. D.9");
  working.compute("λ_g", "sqrt(F_y/(τ_g*sqrt(3)))", "1", "Eq. D.8");
  working.compute("χ_g", "min(1, 1.5/(0.5 + λ_g^2))", "1", "Eq. D.7");
  working.compute("v_n", "min(χ_l, χ_g)*τ_y*t", "N/mm", "Eq. D.3 per unit height");
  return working.giving("v_n");
}
