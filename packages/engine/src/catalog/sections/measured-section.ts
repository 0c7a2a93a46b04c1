import { openSection } from "./open-section.ts";
import { roundedTube } from "./rounded-tube.ts";
import type { PressedSection, SectionOrigin, TubeSection } from "./section.ts";

/**
 * A member of the generic container with the thickness that was measured of it; as assumed where none was. Its outside sizes
 * stay: what rust has taken off the outside, half a millimetre of 60, changes them less than makers differ.
 */
export const measuredSection = (
  section: PressedSection | TubeSection,
  thicknessMm: number | undefined,
): PressedSection | TubeSection =>
  section.kind === "pressed" ? measuredPressed(section, thicknessMm) : measuredTube(section, thicknessMm);

export function measuredPressed(section: PressedSection, thicknessMm: number | undefined): PressedSection {
  if (thicknessMm === undefined) return section;
  const { outline } = section;
  return { ...section, ...originOf(section, thicknessMm), thicknessMm, ...openSection(outline, thicknessMm) };
}

export function measuredTube(section: TubeSection, thicknessMm: number | undefined): TubeSection {
  if (thicknessMm === undefined) return section;
  const { depthMm, widthMm } = section;
  return {
    ...{ ...section, ...originOf(section, thicknessMm), wallMm: thicknessMm },
    flatDepthMm: depthMm - 3 * thicknessMm,
    flatWidthMm: widthMm - 3 * thicknessMm,
    ...roundedTube({ depthMm, widthMm, wallMm: thicknessMm, cornerMm: 0 }),
  };
}

const originOf = ({ name, source, certainty }: SectionOrigin, thicknessMm: number): SectionOrigin => ({
  name: `${name}, ${thicknessMm} mm as measured`,
  source: `${source}; thickness measured`,
  certainty,
});
