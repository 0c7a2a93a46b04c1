import type { StripPart } from "../../sheet/PartStrip.tsx";

/** The parts of sheet 6 in reading order, by the id each section bears. */
export const calculationParts: readonly StripPart[] = [
  { id: "calculations-checks", name: "Checks" },
  { id: "calculations-loads", name: "Loads" },
  { id: "calculations-combinations", name: "Combined" },
  { id: "calculations-envelope", name: "Envelope" },
  { id: "calculations-coverage", name: "Coverage" },
];
