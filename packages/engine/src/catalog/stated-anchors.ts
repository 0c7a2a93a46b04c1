/**
 * The anchors of a hold-down on its pad, which are not drawn: four headed ones in a square in the pad's middle, this deep
 * where the concrete under their heads allows; common practice, no published source.
 */
export const statedAnchors = { count: 4, diameterMm: 16, depthMm: 150, spacingMm: 200, underHeadMm: 75 } as const;

/** How deep they go in a pad of this thickness, mm. */
export const anchorDepthMm = (thicknessMm: number): number =>
  Math.min(statedAnchors.depthMm, Math.max(thicknessMm - statedAnchors.underHeadMm, 1));
