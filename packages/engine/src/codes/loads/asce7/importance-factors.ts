import type { RiskCategory } from "../../../loads/site-hazards.ts";

/** Table 1.5-2, from memory. 7-22 has no factor for snow: its maps are drawn for each category. */
export const importanceFactors: Readonly<Record<RiskCategory, { readonly snow: number; readonly seismic: number }>> = {
  I: { snow: 0.8, seismic: 1 },
  II: { snow: 1, seismic: 1 },
  III: { snow: 1.1, seismic: 1.25 },
  IV: { snow: 1.2, seismic: 1.5 },
};
