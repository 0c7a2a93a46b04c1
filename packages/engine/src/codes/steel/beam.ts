import type { Steel } from "../../catalog/materials.ts";
import type { Section } from "../../catalog/sections/section.ts";

/** A member in bending: the length between points held against lateral movement or twist (mm, ≥ 0) and C_b. */
export type Beam = {
  readonly section: Section;
  readonly steel: Steel;
  readonly unbracedMm: number;
  readonly cb: number;
};
