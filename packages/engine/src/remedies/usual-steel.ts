import type { PadSize } from "../strength/element-result.ts";

/** What a post stands on as its load grows: rungs of one ladder. */
export const postRungs: readonly { readonly section: string; readonly pad: PadSize }[] = [
  { section: "HSS4x4x1/4", pad: { sideMm: 900, depthMm: 450 } },
  { section: "HSS4x4x1/4", pad: { sideMm: 1200, depthMm: 500 } },
  { section: "HSS4x4x1/2", pad: { sideMm: 1600, depthMm: 600 } },
  { section: "HSS6x6x3/8", pad: { sideMm: 2000, depthMm: 700 } },
];

/** Bars of a frame beyond the stated tube, from the lightest; common practice, no published source. */
export const frameRungs: readonly { readonly jamb: string; readonly header: string; readonly sill: string }[] = [
  { jamb: "HSS4x4x1/4", header: "HSS4x4x1/4", sill: "HSS4x4x1/4" },
  { jamb: "HSS4x4x1/2", header: "HSS6x4x3/8", sill: "HSS4x4x1/2" },
  { jamb: "HSS6x4x3/8", header: "HSS8x4x3/8", sill: "HSS6x4x3/8" },
];

/** Headers alone, ever deeper. */
export const headerRungs = ["HSS6x4x3/8", "HSS8x4x3/8", "W12x26", "W18x50"] as const;
