import type { Steel } from "../catalog/materials.ts";
import type { Section } from "../catalog/sections/section.ts";
import type { Resistance } from "../working/resistance.ts";
import type { CodeBasis } from "./code-basis.ts";
import type { CheckedElement } from "./limit-state.ts";

/**
 * A member to check. Effective lengths mm, > 0; `unbracedMm` ≥ 0 between what holds the pressed flange sideways. Strong is
 * the axis across the depth.
 */
export type CheckedMember = {
  readonly element: CheckedElement;
  readonly section: Section;
  readonly steel: Steel;
  readonly lengths: { readonly strongMm: number; readonly weakMm: number; readonly twistMm: number };
  readonly unbracedMm: number;
  readonly cb: number;
};

/** What a member can bear, each with its working or its refusal; it depends on no load, so one set serves all combinations. */
export type MemberStrengths = {
  readonly element: CheckedElement;
  readonly family: "structural steel" | "cold-formed";
  readonly basis: CodeBasis;
  readonly compression: Resistance;
  readonly tension: Resistance;
  /** Bending about the strong axis with the head pressed (moment > 0) or the foot (moment < 0). */
  readonly headPressed: Resistance;
  readonly footPressed: Resistance;
  readonly weak: Resistance;
  readonly shear: Resistance;
  readonly shearWeak: Resistance;
  readonly torsion: Resistance;
};
