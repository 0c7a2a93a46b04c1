import type { Working } from "../working/working.ts";

/** How stiff a building of its kind is, for the approximate period. */
export type PeriodKind = "steel moment frame" | "eccentric or buckling-restrained braces" | "other";

/** A mass at its height above the base: where the earthquake's force on it acts. */
export type StoreyMass = { readonly id: string; readonly heightMm: number; readonly weightN: number };

/** The horizontal force of one level and of the diaphragm there, N. */
export type StoreyForce = {
  readonly id: string;
  readonly heightMm: number;
  readonly weightN: number;
  readonly forceN: number;
  readonly diaphragmN: number;
  readonly workings: readonly Working[];
};

export type SeismicForces = {
  readonly coefficient: Working;
  readonly baseShear: Working;
  readonly periodS: number;
  readonly storeys: readonly StoreyForce[];
};
