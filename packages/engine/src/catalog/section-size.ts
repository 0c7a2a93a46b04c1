import { findSection } from "./sections/find-section.ts";
import { postSizeMm } from "./post-size.ts";

/** Outside sizes of a section as it stands: depth upright, width across, mm. */
export type SectionSize = { readonly depthMm: number; readonly widthMm: number };

/** From the section catalogue; of a name it does not have, a square of the size that is read from the name. */
export function sectionSizeMm(name: string): SectionSize {
  const section = findSection(name);
  switch (section?.kind) {
    case "tube":
      return { depthMm: section.depthMm, widthMm: section.widthMm };
    case "I":
    case "channel":
      return { depthMm: section.depthMm, widthMm: section.flangeWidthMm };
    case "angle":
      return { depthMm: section.legMm, widthMm: section.legMm };
    default: {
      const size = postSizeMm(name);
      return { depthMm: size, widthMm: size };
    }
  }
}
