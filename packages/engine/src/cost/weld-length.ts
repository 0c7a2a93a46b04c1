import type { Section } from "../catalog/sections/section.ts";
import type { PlateMm } from "./steel-mass.ts";

/** Leg of every fillet weld that is not drawn in detail. Common practice, no published source. */
export const weldLegMm = 5;

/** Once round a plate, m. */
export const roundPlateM = ({ long, wide }: Omit<PlateMm, "thick">): number => (2 * (long + wide)) / 1000;

/** Once round an end of a bar, m. */
export const roundEndM = (section: Section): number => outlineMm(section) / 1000;

function outlineMm(section: Section): number {
  switch (section.kind) {
    case "tube":
      return 2 * (section.depthMm + section.widthMm);
    case "I":
      return 2 * section.depthMm + 4 * section.flangeWidthMm;
    case "channel":
      return 2 * section.depthMm + 4 * section.flangeWidthMm;
    case "angle":
      return 4 * section.legMm;
    case "pressed":
      return (2 * section.areaMm2) / section.thicknessMm;
  }
}
