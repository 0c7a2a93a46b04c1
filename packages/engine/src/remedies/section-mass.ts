import { steelKgPerMm3 } from "../catalog/materials.ts";
import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube, windowTube } from "../catalog/sections/frame-tubes.ts";

/** Mass of a section by name, kg/m; those of the stated frames as well, 0 for a name the catalogue lacks. */
export function kgPerMOf(name: string): number {
  const section = findSection(name) ?? [frameTube, windowTube].find((tube) => tube.name === name);
  return section === undefined ? 0 : section.areaMm2 * MM_PER_M * steelKgPerMm3;
}

const MM_PER_M = 1000;
