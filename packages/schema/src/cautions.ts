/** The one line that is never hidden, on screen and in print. */
export const cautionLine = "Screening. Preliminary until sealed by a licensed engineer";

/** The five cautions it opens; carried by every print and export. */
export const cautions = [
  "Screening, preliminary until sealed by a licensed engineer.",
  "Governed by local code and the authority that applies it.",
  "Members, grade and condition of used containers must be verified in the field.",
  "Cutting, lifting and temporary support need a plan of their own.",
  "Values come from a generic container specification, not from this container.",
] as const;
