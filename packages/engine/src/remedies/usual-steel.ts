import type { PadSize } from "../strength/element-result.ts";

/** Tubes posts are usually made of, from the lightest; common practice, no published source. */
export const postSections = ["HSS4x4x1/4", "HSS4x4x1/2", "HSS5x5x3/8", "HSS6x6x3/8", "HSS8x8x3/8"] as const;

/** The pad of a post before its load is known. */
export const usualPad: PadSize = { sideMm: 900, depthMm: 450 };

/** Bars of a frame beyond the stated tube, from the lightest; common practice, no published source. */
export const frameRungs: readonly { readonly jamb: string; readonly header: string; readonly sill: string }[] = [
  { jamb: "HSS4x4x1/4", header: "HSS4x4x1/4", sill: "HSS4x4x1/4" },
  { jamb: "HSS4x4x1/2", header: "HSS6x4x3/8", sill: "HSS4x4x1/2" },
  { jamb: "HSS6x4x3/8", header: "HSS8x4x3/8", sill: "HSS6x4x3/8" },
];

/** Headers alone, ever deeper. */
export const headerRungs = ["HSS6x4x3/8", "HSS8x4x3/8", "W12x26", "W18x50"] as const;
