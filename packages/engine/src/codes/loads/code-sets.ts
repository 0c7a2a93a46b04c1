import type { CodeSet } from "../../loads/code-set.ts";
import type { CodeEdition } from "../../loads/site-hazards.ts";

/** Pairings from memory of the building codes' lists of referenced standards. */
export const codeSets: Readonly<Record<CodeEdition, CodeSet>> = {
  "IBC 2021": {
    building: "IBC 2021",
    loads: "ASCE 7-16",
    steel: "AISC 360-16",
    coldFormed: "AISI S100-16",
    certainty: "memory",
  },
  "IBC 2024": {
    building: "IBC 2024",
    loads: "ASCE 7-22",
    steel: "AISC 360-22",
    coldFormed: "AISI S100-16 with its supplements",
    certainty: "memory",
  },
};
