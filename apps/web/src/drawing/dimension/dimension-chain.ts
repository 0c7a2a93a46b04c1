export type DimensionSegment = { fromMm: number; toMm: number; text: string };

/**
 * Dimensions between rising places. Places are rounded to the millimetre before they are taken from each other, so that
 * a string of dimensions always adds up to the overall one written under it.
 */
export function dimensionChain(placesMm: readonly number[]): DimensionSegment[] {
  return placesMm.slice(1).map((toMm, index) => {
    const fromMm = placesMm[index] ?? toMm;
    return { fromMm, toMm, text: metres(Math.round(toMm) - Math.round(fromMm)) };
  });
}

/** The overall dimension: the first place to the last. */
export function overallDimension(placesMm: readonly number[]): DimensionSegment[] {
  const first = placesMm.at(0);
  const last = placesMm.at(-1);
  return first === undefined || last === undefined || first === last ? [] : dimensionChain([first, last]);
}

/** Metres to the millimetre without unit, as drawings write them. */
export const metres = (lengthMm: number): string => (Math.round(lengthMm) / 1000).toFixed(3).replace("-", "−");

/** A level: signed metres to the millimetre. */
export const level = (heightMm: number): string => {
  const rounded = Math.round(heightMm);
  return rounded === 0 ? "0.000" : `${rounded > 0 ? "+" : "−"}${(Math.abs(rounded) / 1000).toFixed(3)}`;
};
