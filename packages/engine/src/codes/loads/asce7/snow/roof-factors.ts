import type { SnowHazard, WindExposure } from "../../../../loads/site-hazards.ts";
import type { Asce7Edition } from "../asce7-edition.ts";

/** Table 7.3-1, from memory. */
export const exposureFactors: Readonly<Record<SnowHazard["roofExposure"], Readonly<Record<WindExposure, number>>>> = {
  "fully exposed": { B: 0.9, C: 0.9, D: 0.8 },
  "partially exposed": { B: 1, C: 1, D: 0.9 },
  sheltered: { B: 1.2, C: 1.1, D: 1 },
};

/**
 * Tables 7.3-2 and 7.3-3, from memory. 7-22 reads the heated roof by insulation and ground snow; 1.2 is the largest
 * value of that table as remembered, taken for every heated roof.
 */
export const thermalFactors: Readonly<Record<Asce7Edition, Readonly<Record<SnowHazard["thermal"], number>>>> = {
  "2016": { heated: 1, "just above freezing": 1.1, unheated: 1.2, "below freezing": 1.3 },
  "2022": { heated: 1.2, "just above freezing": 1.2, unheated: 1.2, "below freezing": 1.3 },
};
