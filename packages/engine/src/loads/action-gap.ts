/** Actions a code knows and this engine does not work out. Each is printed; none is taken as nothing. */
export type ActionGap =
  | "tornado"
  | "flood"
  | "rain and ponding"
  | "ice"
  | "wind on plant, parapets and guards on roofs"
  | "partial and sliding snow"
  | "snow drift across a gap between buildings"
  | "modal response analysis"
  | "site response study";
