/** Millimetres in an inch, exact (international yard and pound agreement, 1959). */
export const mmPerInch = 25.4;

/** Square, cubic, fourth and sixth powers of it: tables of shapes are printed in inches. */
export const mm2PerInch2 = mmPerInch * mmPerInch;
export const mm3PerInch3 = mm2PerInch2 * mmPerInch;
export const mm4PerInch4 = mm2PerInch2 * mm2PerInch2;
export const mm6PerInch6 = mm4PerInch4 * mm2PerInch2;
