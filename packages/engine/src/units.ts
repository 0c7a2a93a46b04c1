/** Newtons to the kilonewtons results are given in. */
export const toKn = (forceN: number): number => forceN / 1000;

/** Square millimetres to square metres. */
export const toM2 = (areaMm2: number): number => areaMm2 / 1e6;

/** A result rounded for the record: forces to 1 N, lengths to 0.001 mm, so that turned copies give the same text. */
export const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
