import type { UnitSystem } from "@cornerway/schema";

/** Concrete: cubic metres, or cubic yards by the international yard of 1959. */
export const volumeWords = (m3: number, units: UnitSystem): string =>
  units === "US" ? `${(m3 / M3_PER_YD3).toFixed(2)} yd³` : `${m3.toFixed(2)} m³`;

export const M3_PER_YD3 = 0.764_554_857_984;
