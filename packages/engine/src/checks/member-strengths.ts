import type { Steel } from "../catalog/materials.ts";
import type { Section } from "../catalog/sections/section.ts";
import type { Resistance } from "../working/resistance.ts";
import type { CodeBasis } from "./code-basis.ts";
import type { CheckedElement } from "./limit-state.ts";
import { pressedStrengths } from "./pressed-strengths.ts";
import { structuralStrengths } from "./structural-strengths.ts";
import { thinTubeStrengths } from "./thin-tube-strengths.ts";

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

/** Strengths by the code the section belongs to: pressed sections and container rails cold-formed, the rest structural. */
export function memberStrengths(member: CheckedMember, basis: CodeBasis): MemberStrengths {
  const { section } = member;
  if (section.kind === "pressed") return pressedStrengths({ ...member, section }, basis);
  if (section.kind === "tube" && section.made === "container rail")
    return thinTubeStrengths({ ...member, section }, basis);
  return structuralStrengths(member, basis);
}
