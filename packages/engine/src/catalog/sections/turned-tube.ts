import type { TubeSection } from "./section.ts";

/** The same tube lying on its other side: depth and width change places. */
export const turnedTube = (section: TubeSection): TubeSection => ({
  ...section,
  depthMm: section.widthMm,
  widthMm: section.depthMm,
  flatDepthMm: section.flatWidthMm,
  flatWidthMm: section.flatDepthMm,
  ixMm4: section.iyMm4,
  iyMm4: section.ixMm4,
  sxMm3: section.syMm3,
  syMm3: section.sxMm3,
  zxMm3: section.zyMm3,
  zyMm3: section.zxMm3,
  rxMm: section.ryMm,
  ryMm: section.rxMm,
});
