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

/** The section of a name, or undefined where the catalogue has none. */
export const findSection = (name: string): Section | undefined => byName.get(name);

const byName = new Map(namedSections.map((section) => [section.name, section]));
