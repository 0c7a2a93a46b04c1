import type { CorrugatedSheet } from "../../catalog/sections/corrugated-sheet.ts";

/** Orthotropic constants of a folded sheet: bending in N·mm (per mm of width), in-plane in N/mm. */
export type FoldStiffness = {
  /** Bending across the folds, weak. */
  readonly weakNmm: number;
  /** Bending along the folds, strong. */
  readonly strongNmm: number;
  /** In-plane shear with the ends welded all along, G t w/s. */
  readonly shearNPerMm: number;
  /** In-plane along the folds, E t s/w. */
  readonly alongNPerMm: number;
  /** In-plane across the folds with free ends, E t⁴ w/(12 I_pitch): the accordion. */
  readonly acrossNPerMm: number;
};

/** Classical constants of a trapezoidal sheet (Easley 1975; Timoshenko; from memory), E and Poisson's ratio given. */
export function foldStiffness(sheet: CorrugatedSheet, modulusMpa: number, poisson: number): FoldStiffness {
  const { thicknessMm: t, pitchMm: w, developedMm: s, iPitchMm4 } = sheet;
  const plate = (modulusMpa * t * t * t) / (12 * (1 - poisson * poisson));
  return {
    weakNmm: (plate * w) / s,
    strongNmm: (modulusMpa * iPitchMm4) / w,
    shearNPerMm: ((modulusMpa / (2 * (1 + poisson))) * t * w) / s,
    alongNPerMm: (modulusMpa * t * s) / w,
    acrossNPerMm: (modulusMpa * t * t * t * t * w) / (12 * iPitchMm4),
  };
}
