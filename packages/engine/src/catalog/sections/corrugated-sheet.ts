import { openSection, wallsAlong } from "./open-section.ts";
import { lengthOf } from "./thin-walled-section.ts";

/** Trapezoidal fold of a sheet, mm: two flats, the slope's projection, the depth between the flats' centrelines. */
export type Fold = {
  readonly outerFlatMm: number;
  readonly slopeMm: number;
  readonly innerFlatMm: number;
  readonly depthMm: number;
};

/** What one fold is worth, per millimetre of width where so named. */
export type CorrugatedSheet = Fold & {
  readonly thicknessMm: number;
  readonly pitchMm: number;
  readonly developedMm: number;
  readonly slopeLengthMm: number;
  readonly widestFoldMm: number;
  readonly areaMm2PerMm: number;
  readonly iPitchMm4: number;
  readonly iMm4PerMm: number;
  readonly sMm3PerMm: number;
};

/** Folds of the generic dry container; common practice, no published source. */
export const folds = {
  side: { outerFlatMm: 72, slopeMm: 68, innerFlatMm: 70, depthMm: 36 },
  end: { outerFlatMm: 110, slopeMm: 18, innerFlatMm: 104, depthMm: 45.6 },
  roof: { outerFlatMm: 91, slopeMm: 13.5, innerFlatMm: 91, depthMm: 20 },
} as const satisfies Record<string, Fold>;

/** Properties of a folded sheet about its own centroid. Derived. */
export function corrugatedSheet(fold: Fold, thicknessMm: number): CorrugatedSheet {
  const outline = [
    { xMm: 0, yMm: fold.depthMm },
    { xMm: fold.outerFlatMm, yMm: fold.depthMm },
    { xMm: fold.outerFlatMm + fold.slopeMm, yMm: 0 },
    { xMm: fold.outerFlatMm + fold.slopeMm + fold.innerFlatMm, yMm: 0 },
    { xMm: fold.outerFlatMm + 2 * fold.slopeMm + fold.innerFlatMm, yMm: fold.depthMm },
  ];
  const pitchMm = fold.outerFlatMm + 2 * fold.slopeMm + fold.innerFlatMm;
  const section = openSection(outline, thicknessMm);
  const developedMm = wallsAlong(outline, thicknessMm).reduce((total, wall) => total + lengthOf(wall), 0);
  const slopeLengthMm = Math.sqrt(fold.slopeMm * fold.slopeMm + fold.depthMm * fold.depthMm);
  return {
    ...fold,
    thicknessMm,
    pitchMm,
    developedMm,
    slopeLengthMm,
    widestFoldMm: Math.max(fold.outerFlatMm, fold.innerFlatMm, slopeLengthMm),
    areaMm2PerMm: section.areaMm2 / pitchMm,
    iPitchMm4: section.ixMm4,
    iMm4PerMm: section.ixMm4 / pitchMm,
    sMm3PerMm: section.sxMm3 / pitchMm,
  };
}
