import { rolledAngles, rolledChannels, rolledIShapes } from "./rolled-shapes.ts";
import type { Section } from "./section.ts";
import { structuralTubes } from "./structural-tubes.ts";

/** Every section a scheme may name, in the order of the tables. */
export const namedSections: readonly Section[] = [
  ...structuralTubes,
  ...rolledIShapes,
  ...rolledChannels,
  ...rolledAngles,
];

/**
 * The section of a name, or undefined where the catalogue has none. Blanks, case and the sign between the sizes do not
 * matter; a square or rectangular tube answers to its sizes in millimetres as well: HSS 102×102×6.4 is HSS4x4x1/4.
 */
export const findSection = (name: string): Section | undefined => byName.get(keyOf(name));

const keyOf = (name: string): string => name.replaceAll(" ", "").replaceAll("×", "x").toLowerCase();

function namesOf(section: Section): string[] {
  if (section.kind !== "tube") return [section.name];
  const { depthMm, widthMm, wallMm } = section;
  const nominalMm = Math.round((wallMm / designShareOfWall) * 10) / 10;
  return [section.name, `HSS${Math.round(depthMm)}x${Math.round(widthMm)}x${nominalMm}`];
}

/** Design wall of a tube over its nominal wall: AISC 360 B4.2, from memory. */
const designShareOfWall = 0.93;

const byName = new Map(namedSections.flatMap((section) => namesOf(section).map((name) => [keyOf(name), section])));
