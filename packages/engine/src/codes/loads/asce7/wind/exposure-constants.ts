import type { WindExposure } from "../../../../loads/site-hazards.ts";
import type { Asce7Edition } from "../asce7-edition.ts";

/** Table 26.11-1, power law of the mean wind profile: K_z = factor·(z/z_g)^(2/α). From memory. */
export type ExposureConstants = { readonly factor: number; readonly alpha: number; readonly gradientHeightM: number };

/** Gradient heights are the text's feet: 1200, 900, 700 (7-16) and 3280, 2460, 1935 (7-22). */
export const exposureConstants: Readonly<Record<Asce7Edition, Readonly<Record<WindExposure, ExposureConstants>>>> = {
  "2016": {
    B: { factor: 2.01, alpha: 7, gradientHeightM: 1200 * 0.3048 },
    C: { factor: 2.01, alpha: 9.5, gradientHeightM: 900 * 0.3048 },
    D: { factor: 2.01, alpha: 11.5, gradientHeightM: 700 * 0.3048 },
  },
  "2022": {
    B: { factor: 2.41, alpha: 7.5, gradientHeightM: 3280 * 0.3048 },
    C: { factor: 2.41, alpha: 9.8, gradientHeightM: 2460 * 0.3048 },
    D: { factor: 2.41, alpha: 11.5, gradientHeightM: 1935 * 0.3048 },
  },
};

/** Below 15 ft the profile is constant. */
export const leastProfileHeightM = 15 * 0.3048;
