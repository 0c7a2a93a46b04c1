/** Px of width for each kN where one metre is 50 px. */
const perKnPx = 0.122;
const scaleOfPerKn = 50;
const leastPx = 1.1;
const mostPx = 24;

/** Width of a load stroke: a measurement, never eased. Stops at 24 px; the figure at its foot goes on. */
export const strokeWidthPx = (forceKn: number, pxPerM: number): number =>
  Math.min(mostPx, Math.max(leastPx, (perKnPx * forceKn * pxPerM) / scaleOfPerKn));

/** The force at which the width stops, kN, at this drawing scale. */
export const widestForceKn = (pxPerM: number): number => (mostPx * scaleOfPerKn) / (perKnPx * pxPerM);
