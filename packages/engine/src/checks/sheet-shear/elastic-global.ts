import type { Certainty } from "@cornerway/schema";
import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { letPanel, type SheetPanel } from "./sheet-panel.ts";

/** Factor of global shear buckling and how its edges are held. */
export type GlobalFactor = { readonly k: number; readonly meaning: string; readonly certainty: Certainty };

/** Hinged edges, the lowest figure in the literature (31.6 to 36). From memory. */
export const hingedEdges: GlobalFactor = {
  k: 31.6,
  meaning: "edges hinged, lowest of 31.6 to 36",
  certainty: "memory",
};

const literature = {
  document: "Easley, J. Struct. Div. ASCE",
  edition: "1975",
  place: "global buckling",
  certainty: "memory",
} as const;

/** Shear flow at which the whole panel buckles elastically, N/mm, never above yield: τ_g = k D_x^¼ D_z^¾/(t h²). */
export function elasticGlobal(panel: SheetPanel, factor: GlobalFactor = hingedEdges): Working {
  const working = openWorking("Sheet in shear, elastic buckling of the whole panel", literature);
  letPanel(working, panel);
  working.let("k_g", factor.k, "1", factor.meaning, factor.certainty);
  working.compute("τ_g", "k_g*sqrt(sqrt(D_x*D_z^3))/(t*h^2)", "MPa");
  working.compute("v_n", "min(τ_g, τ_y)*t", "N/mm");
  return working.giving("v_n");
}
