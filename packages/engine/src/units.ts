/** The micrometres a scheme stores to the millimetres worked in. */
export const toMm = (lengthUm: number): number => lengthUm / 1000;

/** The thousandths of a degree a scheme stores to degrees. */
export const toDegrees = (angleMdeg: number): number => angleMdeg / 1000;

/** Newtons to the kilonewtons results are given in. */
export const toKn = (forceN: number): number => forceN / 1000;

/** Square millimetres to square metres. */
export const toM2 = (areaMm2: number): number => areaMm2 / 1e6;

/** A result rounded for the record: forces to 1 N, lengths to 0.001 mm, so that turned copies give the same text. */
export const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
