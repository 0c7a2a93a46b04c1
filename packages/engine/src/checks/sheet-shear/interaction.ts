import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { hingedEdges, type GlobalFactor } from "./elastic-global.ts";
import { letPanel, type SheetPanel } from "./sheet-panel.ts";

const literature = {
  document: "literature on corrugated webs",
  edition: "as collected in 1996 to 2006",
  place: "interaction of local and global buckling, n = 1",
  certainty: "memory",
} as const;

/** Shear flow with local and global buckling acting together, 1/τ = 1/τ_l + 1/τ_g (n = 1), never above yield, N/mm. */
export function bucklingInteraction(panel: SheetPanel, factor: GlobalFactor = hingedEdges): Working {
  const working = openWorking("Sheet in shear, local and global buckling together", literature);
  letPanel(working, panel);
  working.let("k_l", 5.34, "1", "fold with hinged edges", "memory");
  working.let("k_g", factor.k, "1", factor.meaning, factor.certainty);
  working.compute("τ_l", "k_l*π^2*E/(12*(1 - 0.3^2))*(t/a)^2", "MPa");
  working.compute("τ_g", "k_g*sqrt(sqrt(D_x*D_z^3))/(t*h^2)", "MPa");
  working.compute("τ_i", "1/(1/τ_l + 1/τ_g)", "MPa");
  working.compute("v_n", "min(τ_i, τ_y)*t", "N/mm");
  return working.giving("v_n");
}
