import type { Clause } from "../../../working/working.ts";

/** Which of the two editions a formula is read from. */
export type Asce7Edition = "2016" | "2022";

/** A clause of ASCE 7. The text itself was not at hand: every clause is from memory. */
export const asce7 = (edition: Asce7Edition, place: string): Clause => ({
  document: "ASCE 7",
  edition,
  place,
  certainty: "memory",
});
