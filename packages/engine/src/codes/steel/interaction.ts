import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { aisc, type SteelBasis } from "./steel-basis.ts";

/** Required strengths, N and N·mm, second-order effects included; signs do not matter. */
export type RequiredStrengths = { readonly axialN: number; readonly mxNmm: number; readonly myNmm: number };

/** Workings of the available strengths of the same member in the same method. */
export type AvailableStrengths = { readonly axial: Working; readonly mx: Working; readonly my: Working };

/** Axial force with bending about both axes (H1.1; H1.2 takes the same equations for tension): utilisation against 1. */
export function axialWithBending(
  required: RequiredStrengths,
  available: AvailableStrengths,
  basis: SteelBasis,
): Working {
  const working = openWorking("Axial force with bending", aisc(basis, "H1"));
  working.let("P_r", Math.abs(required.axialN), "N", "required axial strength", "derived", "analysis");
  working.let("M_rx", Math.abs(required.mxNmm), "N·mm", "required moment, strong axis", "derived", "analysis");
  working.let("M_ry", Math.abs(required.myNmm), "N·mm", "required moment, weak axis", "derived", "analysis");
  working.take("P_c", available.axial);
  working.take("M_cx", available.mx);
  working.take("M_cy", available.my);
  const heavy = working.when("P_r/P_c", ">=", "0.2");
  working.compute(
    "ratio",
    heavy ? "P_r/P_c + 8/9*(M_rx/M_cx + M_ry/M_cy)" : "P_r/(2*P_c) + (M_rx/M_cx + M_ry/M_cy)",
    "1",
    heavy ? "Eq. H1-1a" : "Eq. H1-1b",
  );
  working.let("limit", 1, "1", "limit", "memory");
  return working.against("ratio", "limit");
}
