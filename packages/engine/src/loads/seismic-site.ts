import type { Working } from "../working/working.ts";

export type SeismicCategory = "A" | "B" | "C" | "D" | "E" | "F";

/** What an earthquake asks at this site, fractions of g, and the design category that follows. */
export type SeismicDesign = {
  readonly sds: number;
  readonly sd1: number;
  readonly s1: number;
  readonly longPeriodS: number;
  readonly importance: number;
  readonly category: SeismicCategory;
  readonly workings: readonly Working[];
};
